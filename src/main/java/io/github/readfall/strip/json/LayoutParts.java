package io.github.readfall.strip.json;

import io.github.readfall.base.finding.Spelling;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.script.Letters;
import io.github.readfall.strip.CueMark;
import io.github.readfall.strip.Extra;
import io.github.readfall.strip.KeepClear;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Mouth;
import io.github.readfall.strip.Opening;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.Parked;
import io.github.readfall.type.balloon.ShapeKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/** Reads the lists of layout.json. */
final class LayoutParts {

  private static final List<String> SHAPES =
      Arrays.stream(ShapeKind.values()).map(ShapeKind::word).toList();

  private final LayoutFindings faults;

  LayoutParts(LayoutFindings faults) {
    this.faults = faults;
  }

  /** The panels in script order, with their places in the file; one of two with the same number. */
  List<LocatedPart<PanelBox>> panels(Members root) {
    Set<Integer> seen = new HashSet<>();
    List<LocatedPart<PanelBox>> panels =
        new ArrayList<>(
            root.each(
                "panels",
                json -> panel(json, seen).map(panel -> new LocatedPart<>(panel, json.offset()))));
    panels.sort(Comparator.comparingInt(panel -> panel.part().panel()));
    return panels;
  }

  private Optional<PanelBox> panel(Members json, Set<Integer> seen) {
    Optional<PanelBox> panel = panel(json);
    Optional<PanelBox> second = panel.filter(p -> !seen.add(p.panel()));
    second.ifPresent(
        p ->
            faults.error(
                "panel-twice",
                json.offset(),
                "Panel " + p.panel() + " has a box already, so this one is left out.",
                "Keep one of the two, or give this one the number of another panel."));
    return second.isPresent() ? Optional.empty() : panel;
  }

  private static Optional<PanelBox> panel(Members json) {
    json.need("panel", "this box is left out");
    json.need("box", "this panel has no place");
    Optional<Integer> number = json.count("panel");
    Optional<Box> box = json.box("box");
    String heading = json.words("heading").orElse("");
    Extra extra = json.extra();
    return number.flatMap(n -> box.map(b -> new PanelBox(n, b, heading, extra)));
  }

  List<KeepClear> keepClear(Members root) {
    return root.each("keepClear", LayoutParts::keepClearArea);
  }

  private static Optional<KeepClear> keepClearArea(Members json) {
    json.need("box", "nothing is kept clear here");
    Optional<Box> box = json.box("box");
    String what = json.words("what").orElse("");
    Extra extra = json.extra();
    return box.map(b -> new KeepClear(b, what, extra));
  }

  List<Mouth> mouths(Members root) {
    return root.each("speakers", LayoutParts::mouth);
  }

  private static Optional<Mouth> mouth(Members json) {
    List.of("panel", "speaker", "mouth").forEach(key -> json.need(key, "this mouth is left out"));
    Optional<Integer> panel = json.count("panel");
    Optional<String> speaker = json.words("speaker");
    Optional<XY> at = json.point("mouth");
    Extra extra = json.extra();
    return panel.flatMap(n -> speaker.flatMap(s -> at.map(xy -> new Mouth(n, s, xy, extra))));
  }

  List<Opening> openings(Members root) {
    return root.each("openings", LayoutParts::opening);
  }

  private static Optional<Opening> opening(Members json) {
    List.of("atPx", "byPx").forEach(key -> json.need(key, "this opening is left out"));
    OptionalDouble at = json.length("atPx");
    OptionalDouble by = json.shift("byPx");
    Extra extra = json.extra();
    return at.isPresent() && by.isPresent()
        ? Optional.of(new Opening(at.getAsDouble(), by.getAsDouble(), extra))
        : Optional.empty();
  }

  /** The balloons, with their places in the file. */
  List<LocatedPart<LaidBalloon>> balloons(Members root) {
    return root.each(
        "balloons", json -> balloon(json).map(b -> new LocatedPart<>(b, json.offset())));
  }

  private Optional<LaidBalloon> balloon(Members json) {
    String id = json.words("id").orElse("");
    Optional<CueMark> cue = json.object("cue").flatMap(LayoutParts::cue);
    LaidBalloon balloon =
        new LaidBalloon(
            id,
            cue,
            shape(json),
            json.box("box"),
            json.length("fontPx"),
            json.length("capitalPx"),
            json.count("lines").map(OptionalInt::of).orElse(OptionalInt.empty()),
            tips(json),
            json.flag("pinned"),
            json.flag("bleed"),
            json.extra());
    if (!id.isEmpty() || cue.isPresent()) {
      return Optional.of(balloon);
    }
    faults.error(
        "missing",
        json.offset(),
        "Nothing says which cue this balloon is for, so it is left out.",
        "Give it an id such as \"p1-1\", or a cue with panel, speaker and text.");
    return Optional.empty();
  }

  private static List<XY> tips(Members json) {
    Optional<XY> tip = json.point("tailTo");
    List<XY> tips = json.points("tailsTo");
    return tips.isEmpty() ? tip.stream().toList() : tips;
  }

  private static Optional<CueMark> cue(Members json) {
    List.of("panel", "speaker", "text")
        .forEach(key -> json.need(key, "the id alone says which cue this is"));
    Optional<Integer> panel = json.count("panel");
    Optional<String> speaker = json.words("speaker");
    Optional<String> text = json.words("text");
    return panel.flatMap(n -> speaker.flatMap(s -> text.map(t -> new CueMark(n, s, t))));
  }

  private Optional<ShapeKind> shape(Members json) {
    Optional<String> word = json.words("shape");
    Optional<ShapeKind> shape = word.flatMap(ShapeKind::of);
    if (word.isPresent() && shape.isEmpty()) {
      faults.error(
          "shape",
          json.offsetOf("shape"),
          "There is no shape "
              + LayoutFindings.shown(word.get())
              + ", so the voice's own is taken.",
          Spelling.nearestName(word.get(), SHAPES, Letters::fold)
              .map(near -> "Perhaps you meant " + near + ".")
              .orElse("Write one of " + String.join(", ", SHAPES) + "."));
    }
    return shape;
  }

  Parked parked(Members root) {
    return root.object("parked")
        .map(
            json ->
                new Parked(
                    json.each("panels", LayoutParts::panel),
                    mouths(json),
                    json.each("balloons", this::balloon)))
        .orElse(Parked.NONE);
  }
}
