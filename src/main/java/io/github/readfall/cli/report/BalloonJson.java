package io.github.readfall.cli.report;

import static io.github.readfall.cli.report.JsonReport.number;

import io.github.readfall.base.geom.SvgPath;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.LetterKind;
import io.github.readfall.base.viewing.Phone;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetLine;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.type.balloon.Tail;
import io.github.readfall.type.text.PlacedRun;
import io.github.readfall.type.text.SizedFace;
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

  /** A balloon that has no place yet, at its own origin. */
  ObjectNode of(SetBalloon balloon) {
    return of(balloon, new XY(0, 0), false);
  }

  /** A balloon in its place, in strip coordinates. */
  ObjectNode of(PlacedBalloon balloon) {
    ObjectNode json = of(balloon.set(), balloon.at(), true);
    balloon.tail().ifPresent(tail -> tail(json.putObject("tail"), tail));
    if (balloon.tails().size() > 1) {
      ArrayNode tails = json.putArray("tails");
      balloon.tails().forEach(tail -> tail(tails.addObject(), tail));
    }
    return json;
  }

  private static void tail(ObjectNode json, Tail tail) {
    FindingJson.point(json.putArray("from"), tail.root());
    FindingJson.point(json.putArray("to"), tail.tip());
  }

  private ObjectNode of(SetBalloon balloon, XY at, boolean placed) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("id", balloon.cue().id());
    json.put("panel", balloon.cue().panel());
    json.put("speaker", balloon.cue().speaker());
    if (balloon.cue().speakers().size() > 1) {
      ArrayNode speakers = json.putArray("speakers");
      balloon.cue().speakers().forEach(speakers::add);
    }
    ArrayNode manners = json.putArray("manner");
    balloon.cue().manners().forEach(manner -> manners.add(manner.word()));
    json.put("scriptLine", balloon.cue().line());
    json.put("placed", placed);
    json.put("language", balloon.language().tag());
    json.put("direction", balloon.language().direction());
    sizes(json, balloon);
    ArrayNode lines = json.putArray("lines");
    balloon.lines().forEach(line -> lines.add(line(line, balloon, at)));
    outline(json.putObject("outline"), balloon, at);
    balloon.joinedTo().ifPresent(partner -> json.put("joinedTo", partner));
    return json;
  }

  private void sizes(ObjectNode json, SetBalloon balloon) {
    SizedFace type = balloon.type();
    json.put("fontPx", number(type.fontPx()));
    json.put("fontDp", number(phone.dp(type.fontPx(), stripWidthPx)));
    angle(json, "capArcmin", type.capitalPx());
    if (!balloon.capitals()) {
      angle(json, "xArcmin", type.heightPx(LetterKind.X_HEIGHT));
    }
    double ideographPx = type.heightPx(LetterKind.IDEOGRAPH);
    double fullPx = ideographPx > 0 ? ideographPx : type.heightPx(LetterKind.SYLLABLE);
    angle(json, "ideographArcmin", fullPx);
    json.set("letterArcmin", letters(balloon));
    json.put("leadingPx", number(balloon.leadingPx()));
    json.put("marginPx", number(balloon.marginPx()));
    if (balloon.trackingPx() != 0) {
      json.put("trackingPx", number(balloon.trackingPx()));
    }
  }

  /** The letters that its size is judged by. */
  private ObjectNode letters(SetBalloon balloon) {
    ObjectNode letters = JsonNodeFactory.instance.objectNode();
    balloon.letters().forEach(letter -> angle(letters, letter.kind().word(), letter.px()));
    return letters;
  }

  private void angle(ObjectNode json, String field, double heightPx) {
    if (heightPx > 0) {
      json.put(field, number(phone.angleOf(heightPx, stripWidthPx).arcmin()));
    }
  }

  private static ObjectNode line(SetLine set, SetBalloon balloon, XY at) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("text", set.line().text());
    json.put("advancePx", number(set.line().advancePx()));
    if (set.line().closedUpPx() > 0) {
      json.put("closedUpPx", number(set.line().closedUpPx()));
    }
    json.put("xPx", number(set.xPx() + at.x()));
    json.put("baselinePx", number(set.baselinePx() + at.y()));
    ArrayNode runs = json.putArray("runs");
    for (PlacedRun run : set.line().runs()) {
      ObjectNode part = runs.addObject();
      part.put("face", run.type().face().file().id());
      part.put("text", run.text());
      part.put("advancePx", number(run.advancePx()));
      part.put("slantDeg", number(run.type().slantDeg()));
      switch (run.ornament()) {
        case NONE -> {}
        case BARRED_I -> part.put("barred", true);
        case DOTS_OVER, DOTS_UNDER -> part.put("dotted", true);
      }
      if (run.type().fontPx() != balloon.type().fontPx()) {
        part.put("fontPx", number(run.type().fontPx()));
      }
    }
    return json;
  }

  private static void outline(ObjectNode json, SetBalloon balloon, XY at) {
    json.put("shape", balloon.look().shape().word());
    if (balloon.look().shape().isRound()) {
      json.put("exponent", number(balloon.outlineStyle().squareness()));
    }
    FindingJson.box(json.putArray("box"), balloon.box().movedBy(at.x(), at.y()));
    json.put("path", SvgPath.of(balloon.outline().movedBy(at.x(), at.y())));
  }
}
