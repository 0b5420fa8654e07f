package io.github.readfall.strip;

import io.github.readfall.balloon.ShapeKind;
import io.github.readfall.geom.Box;
import io.github.readfall.geom.XY;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads layout.json. */
public final class LayoutReader {

  /** Reads the text of a layout.json. */
  public ReadLayout read(String json) {
    JsonNode root = JsonMapper.builder().build().readTree(json);
    JsonNode strip = root.path("strip");
    List<PanelBox> panels = new ArrayList<>();
    for (JsonNode panel : root.path("panels")) {
      panels.add(
          new PanelBox(
              panel.path("panel").asInt(),
              box(panel.path("box")),
              panel.path("heading").asString(""),
              Extra.NONE));
    }
    List<KeepClear> keepClear = new ArrayList<>();
    for (JsonNode area : root.path("keepClear")) {
      keepClear.add(
          new KeepClear(box(area.path("box")), area.path("what").asString(""), Extra.NONE));
    }
    List<Mouth> mouths = new ArrayList<>();
    for (JsonNode speaker : root.path("speakers")) {
      mouths.add(
          new Mouth(
              speaker.path("panel").asInt(),
              speaker.path("speaker").asString(""),
              point(speaker.path("mouth")),
              Extra.NONE));
    }
    List<LaidBalloon> balloons = new ArrayList<>();
    for (JsonNode balloon : root.path("balloons")) {
      balloons.add(balloon(balloon));
    }
    Optional<List<Double>> cuts = Optional.empty();
    if (root.has("cuts")) {
      List<Double> heights = new ArrayList<>();
      root.path("cuts").forEach(cut -> heights.add(cut.asDouble()));
      cuts = Optional.of(heights);
    }
    return new ReadLayout(
        Optional.of(
            new Layout(
                strip.path("widthPx").asDouble(),
                strip.path("heightPx").asDouble(),
                panels,
                keepClear,
                mouths,
                balloons,
                cuts,
                Extra.NONE)),
        List.of());
  }

  private static LaidBalloon balloon(JsonNode json) {
    JsonNode cue = json.path("cue");
    return new LaidBalloon(
        json.path("id").asString(""),
        cue.isObject()
            ? Optional.of(
                new CueMark(
                    cue.path("panel").asInt(),
                    cue.path("speaker").asString(""),
                    cue.path("text").asString("")))
            : Optional.empty(),
        ShapeKind.of(json.path("shape").asString("")),
        json.has("box") ? Optional.of(box(json.path("box"))) : Optional.empty(),
        number(json.path("fontPx")),
        number(json.path("capitalPx")),
        json.has("tailTo") ? Optional.of(point(json.path("tailTo"))) : Optional.empty(),
        json.path("pinned").asBoolean(false),
        json.path("bleed").asBoolean(false),
        Extra.NONE);
  }

  private static OptionalDouble number(JsonNode json) {
    return json.isNumber() ? OptionalDouble.of(json.asDouble()) : OptionalDouble.empty();
  }

  private static Box box(JsonNode json) {
    return new Box(
        json.path(0).asDouble(),
        json.path(1).asDouble(),
        json.path(2).asDouble(),
        json.path(3).asDouble());
  }

  private static XY point(JsonNode json) {
    return new XY(json.path(0).asDouble(), json.path(1).asDouble());
  }
}
