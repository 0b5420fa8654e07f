package io.github.readfall.window.model;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.script.Cue;
import io.github.readfall.script.LineRange;
import io.github.readfall.script.Panel;
import io.github.readfall.script.Script;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The links between a script and its strip.
 *
 * @param script as written
 * @param galley its strip
 */
public record ScriptStripLinks(Script script, Galley galley) {

  /** The cue that a line of the script, from 1, belongs to. */
  public Optional<Cue> cueAt(int line) {
    return panelAt(line).stream()
        .flatMap(panel -> panel.cues().stream())
        .filter(cue -> isIn(script.linesOf(cue), line))
        .findFirst();
  }

  /** The panel that a line of the script, from 1, belongs to. */
  public Optional<Panel> panelAt(int line) {
    return script.panels().stream().filter(panel -> isIn(script.linesOf(panel), line)).findFirst();
  }

  private static boolean isIn(LineRange range, int line) {
    return range.first() <= line && line <= range.last();
  }

  /** The box on the strip for a line of the script: its balloon, or else its panel. */
  public Optional<Box> placeOf(int line) {
    return cueAt(line)
        .flatMap(cue -> balloon(cue.id()))
        .map(PlacedBalloon::box)
        .or(() -> panelAt(line).flatMap(this::box));
  }

  /**
   * The box of a finding on the strip: its own, or else that of its balloons, its panel or its
   * line.
   */
  public Optional<Box> placeOf(Finding finding) {
    return finding
        .box()
        .or(() -> balloons(finding).stream().map(PlacedBalloon::box).reduce(Box::union))
        .or(
            () ->
                finding.where().panel().stream()
                    .boxed()
                    .flatMap(number -> galley.panel(number).stream())
                    .map(PanelBox::box)
                    .findFirst())
        .or(() -> lineOf(finding).stream().boxed().findFirst().flatMap(this::placeOf));
  }

  /** The line of the script, from 1, that a finding is about; empty if it is about none. */
  public OptionalInt lineOf(Finding finding) {
    if (!finding.where().file().isEmpty() && !isScript(finding.where().file())) {
      return OptionalInt.empty();
    }
    if (finding.where().line().isPresent()) {
      return finding.where().line();
    }
    Optional<Integer> line =
        balloons(finding).stream()
            .map(balloon -> balloon.cue().line())
            .findFirst()
            .or(
                () ->
                    finding.where().panel().stream()
                        .boxed()
                        .flatMap(number -> panel(number).stream())
                        .map(Panel::line)
                        .findFirst());
    return line.map(OptionalInt::of).orElse(OptionalInt.empty());
  }

  private static boolean isScript(String file) {
    return file.endsWith(".txt");
  }

  /** The line of the script, from 1, of the balloon or panel at a point of the strip. */
  public OptionalInt lineAt(XY at) {
    Optional<Integer> line =
        galley.balloons().stream()
            .filter(balloon -> covers(balloon.box(), at))
            .min(Comparator.comparingDouble(balloon -> area(balloon.box())))
            .map(balloon -> balloon.cue().line())
            .or(() -> panelUnder(at).flatMap(this::panel).map(Panel::line));
    return line.map(OptionalInt::of).orElse(OptionalInt.empty());
  }

  private Optional<Integer> panelUnder(XY at) {
    return galley.panels().stream()
        .filter(panel -> covers(panel.box(), at))
        .min(Comparator.comparingDouble(panel -> area(panel.box())))
        .map(PanelBox::panel);
  }

  private static boolean covers(Box box, XY at) {
    return box.covers(new Box(at.x(), at.y(), 0, 0));
  }

  private static double area(Box box) {
    return box.width() * box.height();
  }

  private Optional<Panel> panel(int number) {
    return script.panels().stream().filter(panel -> panel.number() == number).findFirst();
  }

  private Optional<Box> box(Panel panel) {
    return galley.panel(panel.number()).map(PanelBox::box);
  }

  private Optional<PlacedBalloon> balloon(String id) {
    return galley.balloons().stream().filter(balloon -> balloon.id().equals(id)).findFirst();
  }

  private List<PlacedBalloon> balloons(Finding finding) {
    return finding.where().balloons().stream().flatMap(id -> balloon(id).stream()).toList();
  }
}
