package io.github.readfall.strip;

import io.github.readfall.script.Panel;
import io.github.readfall.script.Script;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The layout of a strip: the content of layout.json. Lengths are strip pixels.
 *
 * @param widthPx of the strip; positive
 * @param heightPx of the strip; positive
 * @param panels in script order, each number once
 * @param keepClear areas that nothing may cover
 * @param mouths known mouths of speakers
 * @param balloons in the order of the file; each id once
 * @param cuts ends of canvas pages, from the top, in rising order; empty if they are to be planned
 * @param openings gutters that were opened or closed, each as the strip was then, for the code that
 *     moves the art
 * @param parked what is kept of cues and panels that are gone from the script
 * @param version of the file format, from 1
 * @param extra keys that this version does not know
 */
public record Layout(
    double widthPx,
    double heightPx,
    List<PanelBox> panels,
    List<KeepClear> keepClear,
    List<Mouth> mouths,
    List<LaidBalloon> balloons,
    Optional<List<Double>> cuts,
    List<Opening> openings,
    Parked parked,
    int version,
    Extra extra) {

  /** The version of layout.json that this version of Readfall writes. */
  public static final int VERSION = 1;

  public Layout {
    if (!(widthPx > 0) || !(heightPx > 0)) {
      throw new IllegalArgumentException("not a strip: " + widthPx + " x " + heightPx);
    }
    panels = List.copyOf(panels);
    keepClear = List.copyOf(keepClear);
    mouths = List.copyOf(mouths);
    balloons = List.copyOf(balloons);
    cuts = cuts.map(List::copyOf);
    openings = List.copyOf(openings);
  }

  /** A strip with nothing parked. */
  public Layout(
      double widthPx,
      double heightPx,
      List<PanelBox> panels,
      List<KeepClear> keepClear,
      List<Mouth> mouths,
      List<LaidBalloon> balloons,
      Optional<List<Double>> cuts,
      Extra extra) {
    this(
        widthPx,
        heightPx,
        panels,
        keepClear,
        mouths,
        balloons,
        cuts,
        List.of(),
        Parked.NONE,
        VERSION,
        extra);
  }

  /** A strip with panels and nothing else. */
  public static Layout of(double widthPx, double heightPx, List<PanelBox> panels) {
    return new Layout(
        widthPx, heightPx, panels, List.of(), List.of(), List.of(), Optional.empty(), Extra.NONE);
  }

  /** The box of a panel, if it has one. */
  public Optional<PanelBox> panel(int number) {
    return panels.stream().filter(panel -> panel.panel() == number).findFirst();
  }

  /** The same strip with other balloons. */
  public Layout withBalloons(List<LaidBalloon> others) {
    return new Layout(
        widthPx, heightPx, panels, keepClear, mouths, others, cuts, openings, parked, version,
        extra);
  }

  /** The same strip with other panels. */
  public Layout withPanels(List<PanelBox> others) {
    return new Layout(
        widthPx, heightPx, others, keepClear, mouths, balloons, cuts, openings, parked, version,
        extra);
  }

  /** The same strip with other areas to keep clear. */
  public Layout withKeepClear(List<KeepClear> others) {
    return new Layout(
        widthPx, heightPx, panels, others, mouths, balloons, cuts, openings, parked, version,
        extra);
  }

  /** The same strip with mouths elsewhere. */
  public Layout withMouths(List<Mouth> others) {
    return new Layout(
        widthPx, heightPx, panels, keepClear, others, balloons, cuts, openings, parked, version,
        extra);
  }

  /** The same strip with another height. */
  public Layout withHeight(double otherPx) {
    return new Layout(
        widthPx, otherPx, panels, keepClear, mouths, balloons, cuts, openings, parked, version,
        extra);
  }

  /** The balloon of a cue, if the layout has one. */
  public Optional<LaidBalloon> balloon(String id) {
    return balloons.stream().filter(balloon -> balloon.id().equals(id)).findFirst();
  }

  /** The same strip with other cuts. */
  public Layout withCuts(Optional<List<Double>> others) {
    return new Layout(
        widthPx, heightPx, panels, keepClear, mouths, balloons, others, openings, parked, version,
        extra);
  }

  /**
   * The same strip, each panel with its heading in the script, by which it is found again.
   *
   * @param script in which the panels have their numbers
   */
  public Layout withHeadings(Script script) {
    Map<Integer, Panel> byNumber =
        script.panels().stream().collect(Collectors.toMap(Panel::number, Function.identity()));
    return withPanels(
        panels.stream()
            .map(
                box ->
                    Optional.ofNullable(byNumber.get(box.panel()))
                        .map(panel -> box.headed(PanelBox.heading(panel)))
                        .orElse(box))
            .toList());
  }
}
