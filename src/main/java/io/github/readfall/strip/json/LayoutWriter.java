package io.github.readfall.strip.json;

import io.github.readfall.strip.CueMark;
import io.github.readfall.strip.Extra;
import io.github.readfall.strip.KeepClear;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.Mouth;
import io.github.readfall.strip.Opening;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.Parked;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Writes layout.json: keys always in the same order, one line for each panel and balloon, lengths
 * to a hundredth of a pixel, and unknown keys where they were.
 */
public final class LayoutWriter {

  private LayoutWriter() {}

  /** The text of the file, with a line end at its end. */
  public static String write(Layout layout) {
    List<String> parts = new ArrayList<>();
    Extra extra = layout.extra();
    parts.add("\"readfall-layout\": " + layout.version());
    JsonLine strip =
        new JsonLine()
            .size("widthPx", layout.widthPx())
            .size("heightPx", layout.heightPx())
            .extra(extra.in("strip"));
    parts.add("\"strip\": " + strip);
    parts.add(list("panels", "  ", panels(layout.panels())));
    addList(parts, "keepClear", "  ", layout.keepClear().stream().map(LayoutWriter::area).toList());
    addList(parts, "speakers", "  ", mouths(layout.mouths()));
    addList(parts, "balloons", "  ", balloons(layout.balloons()));
    layout.cuts().ifPresent(cuts -> parts.add("\"cuts\": " + JsonLine.numbers(cuts)));
    addList(parts, "openings", "  ", openings(layout.openings()));
    parked(layout.parked(), extra.in("parked")).ifPresent(parts::add);
    extra.jsonByKey().forEach((key, json) -> parts.add(Json.quoted(key) + ": " + json));
    return "{\n  " + String.join(",\n  ", parts) + "\n}\n";
  }

  private static List<JsonLine> openings(List<Opening> openings) {
    return openings.stream()
        .map(
            opening ->
                new JsonLine()
                    .size("atPx", opening.atPx())
                    .shift("byPx", opening.byPx())
                    .extra(opening.extra()))
        .toList();
  }

  private static Optional<String> parked(Parked parked, Extra extra) {
    List<String> parts = new ArrayList<>();
    addList(parts, "panels", "    ", panels(parked.panels()));
    addList(parts, "speakers", "    ", mouths(parked.mouths()));
    addList(parts, "balloons", "    ", balloons(parked.balloons()));
    extra.jsonByKey().forEach((key, json) -> parts.add(Json.quoted(key) + ": " + json));
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of("\"parked\": {\n    " + String.join(",\n    ", parts) + "\n  }");
  }

  private static void addList(List<String> parts, String key, String indent, List<JsonLine> lines) {
    if (!lines.isEmpty()) {
      parts.add(list(key, indent, lines));
    }
  }

  private static String list(String key, String indent, List<JsonLine> lines) {
    return lines.stream()
        .map(JsonLine::toString)
        .collect(
            Collectors.joining(
                ",\n" + indent + "  ",
                "\"" + key + "\": [" + (lines.isEmpty() ? "" : "\n" + indent + "  "),
                lines.isEmpty() ? "]" : "\n" + indent + "]"));
  }

  private static List<JsonLine> panels(List<PanelBox> panels) {
    return panels.stream()
        .map(
            panel ->
                new JsonLine()
                    .count("panel", panel.panel())
                    .box("box", panel.box())
                    .filledWords("heading", panel.heading())
                    .extra(panel.extra()))
        .toList();
  }

  private static JsonLine area(KeepClear area) {
    return new JsonLine()
        .box("box", area.box())
        .filledWords("what", area.what())
        .extra(area.extra());
  }

  private static List<JsonLine> mouths(List<Mouth> mouths) {
    return mouths.stream()
        .map(
            mouth ->
                new JsonLine()
                    .count("panel", mouth.panel())
                    .words("speaker", mouth.speaker())
                    .point("mouth", mouth.at())
                    .extra(mouth.extra()))
        .toList();
  }

  private static List<JsonLine> balloons(List<LaidBalloon> balloons) {
    return balloons.stream().map(LayoutWriter::balloon).toList();
  }

  private static JsonLine balloon(LaidBalloon balloon) {
    JsonLine line = new JsonLine().filledWords("id", balloon.id());
    Extra inCue = balloon.extra().in("cue");
    balloon.cue().ifPresent(mark -> line.json("cue", cue(mark, inCue)));
    balloon.shape().ifPresent(shape -> line.words("shape", shape.word()));
    balloon.box().ifPresent(box -> line.box("box", box));
    balloon.fontPx().ifPresent(px -> line.size("fontPx", px));
    balloon.capitalPx().ifPresent(px -> line.size("capitalPx", px));
    balloon.lines().ifPresent(number -> line.count("lines", number));
    if (balloon.tailsTo().size() == 1) {
      line.point("tailTo", balloon.tailsTo().get(0));
    } else if (!balloon.tailsTo().isEmpty()) {
      line.points("tailsTo", balloon.tailsTo());
    }
    return line.flag("pinned", balloon.pinned())
        .flag("bleed", balloon.bleed())
        .extra(balloon.extra());
  }

  private static String cue(CueMark mark, Extra extra) {
    return new JsonLine()
        .count("panel", mark.panel())
        .words("speaker", mark.speaker())
        .words("text", mark.text())
        .extra(extra)
        .toString();
  }
}
