package io.github.readfall.report;

import static io.github.readfall.report.JsonReport.number;

import io.github.readfall.font.FaceHeights;
import io.github.readfall.geom.Box;
import io.github.readfall.geom.SvgPath;
import io.github.readfall.text.PlacedRun;
import io.github.readfall.text.SizedFace;
import io.github.readfall.typeset.SetBalloon;
import io.github.readfall.typeset.SetLine;
import io.github.readfall.viewing.Phone;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A balloon as JSON.
 *
 * @param phone that sizes are judged on
 * @param stripWidthPx width of the strip
 */
record BalloonJson(Phone phone, double stripWidthPx) {

  ObjectNode of(SetBalloon balloon) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("id", balloon.cue().id());
    json.put("panel", balloon.cue().panel());
    json.put("speaker", balloon.cue().speaker());
    ArrayNode manners = json.putArray("manner");
    balloon.cue().manners().forEach(manner -> manners.add(manner.word()));
    json.put("scriptLine", balloon.cue().line());
    json.put("placed", false);
    json.put("language", balloon.language().tag());
    json.put("direction", balloon.language().direction());
    sizes(json, balloon);
    ArrayNode lines = json.putArray("lines");
    balloon.lines().forEach(line -> lines.add(line(line, balloon)));
    outline(json.putObject("outline"), balloon);
    balloon.joinedTo().ifPresent(partner -> json.put("joinedTo", partner));
    return json;
  }

  private void sizes(ObjectNode json, SetBalloon balloon) {
    SizedFace type = balloon.type();
    FaceHeights heights = type.face().heights();
    json.put("fontPx", number(type.fontPx()));
    json.put("fontDp", number(phone.dp(type.fontPx(), stripWidthPx)));
    angle(json, "capArcmin", heights.capital() * type.pxPerUnit());
    if (!balloon.capitals()) {
      angle(json, "xArcmin", heights.xHeight() * type.pxPerUnit());
    }
    angle(json, "ideographArcmin", heights.ideograph() * type.pxPerUnit());
    json.put("leadingPx", number(balloon.leadingPx()));
    json.put("marginPx", number(balloon.marginPx()));
    if (balloon.trackingPx() != 0) {
      json.put("trackingPx", number(balloon.trackingPx()));
    }
  }

  private void angle(ObjectNode json, String field, double heightPx) {
    if (heightPx > 0) {
      json.put(field, number(phone.angleOf(heightPx, stripWidthPx).arcmin()));
    }
  }

  private static ObjectNode line(SetLine set, SetBalloon balloon) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("text", set.line().text());
    json.put("advancePx", number(set.line().advancePx()));
    json.put("xPx", number(set.xPx()));
    json.put("baselinePx", number(set.baselinePx()));
    ArrayNode runs = json.putArray("runs");
    for (PlacedRun run : set.line().runs()) {
      ObjectNode part = runs.addObject();
      part.put("face", run.type().face().file().id());
      part.put("text", run.text());
      part.put("advancePx", number(run.advancePx()));
      part.put("slantDeg", number(run.type().slantDeg()));
      if (run.type().fontPx() != balloon.type().fontPx()) {
        part.put("fontPx", number(run.type().fontPx()));
      }
    }
    return json;
  }

  private static void outline(ObjectNode json, SetBalloon balloon) {
    json.put("shape", balloon.look().shape().word());
    Box box = balloon.box();
    ArrayNode edges = json.putArray("box");
    edges.add(number(box.x())).add(number(box.y()));
    edges.add(number(box.width())).add(number(box.height()));
    json.put("path", SvgPath.of(balloon.outline()));
  }
}
