package io.github.readfall.strip.galley;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toMap;
import static java.util.stream.Collectors.toUnmodifiableList;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.RegionIndex;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.strip.Cuts;
import io.github.readfall.strip.KeepClear;
import io.github.readfall.strip.Mouth;
import io.github.readfall.strip.PanelBox;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A strip with every balloon set and in its place: what is checked and drawn. Lengths are strip
 * pixels.
 */
public final class Galley {

  private final SetEpisode set;
  private final double widthPx;
  private final double heightPx;
  private final List<PanelBox> panels;
  private final List<PlacedBalloon> balloons;
  private final List<KeepClear> keepClear;
  private final List<Mouth> mouths;
  private final Cuts cuts;
  private final Map<Integer, PanelBox> panelByNumber;
  private final Map<Integer, List<PlacedBalloon>> balloonsByPanel;
  private final Map<Integer, List<Mouth>> mouthsByPanel;

  /**
   * A strip.
   *
   * @param set the episode with every cue set
   * @param widthPx of the strip; positive
   * @param heightPx of the strip; 0 before anything is placed
   * @param panels in script order, without panels that have no place yet
   * @param balloons in script order; those of {@code set} that have a place
   * @param keepClear areas that nothing may cover
   * @param mouths known mouths of speakers
   * @param cuts of the strip
   */
  public Galley(
      SetEpisode set,
      double widthPx,
      double heightPx,
      List<PanelBox> panels,
      List<PlacedBalloon> balloons,
      List<KeepClear> keepClear,
      List<Mouth> mouths,
      Cuts cuts) {
    this.set = set;
    this.widthPx = widthPx;
    this.heightPx = heightPx;
    this.panels = List.copyOf(panels);
    this.balloons = List.copyOf(balloons);
    this.keepClear = List.copyOf(keepClear);
    this.mouths = List.copyOf(mouths);
    this.cuts = cuts;
    this.panelByNumber =
        panels.stream().collect(toMap(PanelBox::panel, Function.identity(), (first, b) -> first));
    this.balloonsByPanel =
        balloons.stream().collect(groupingBy(PlacedBalloon::panel, toUnmodifiableList()));
    this.mouthsByPanel = mouths.stream().collect(groupingBy(Mouth::panel, toUnmodifiableList()));
  }

  public SetEpisode set() {
    return set;
  }

  public double widthPx() {
    return widthPx;
  }

  public double heightPx() {
    return heightPx;
  }

  public List<PanelBox> panels() {
    return panels;
  }

  public List<PlacedBalloon> balloons() {
    return balloons;
  }

  public List<KeepClear> keepClear() {
    return keepClear;
  }

  public List<Mouth> mouths() {
    return mouths;
  }

  public Cuts cuts() {
    return cuts;
  }

  /** An episode before anything is placed. */
  public static Galley unplaced(SetEpisode set) {
    double widthPx = set.style().strip().widthPx();
    return new Galley(set, widthPx, 0, List.of(), List.of(), List.of(), List.of(), Cuts.NONE);
  }

  /** The same strip with other cuts. */
  public Galley withCuts(Cuts others) {
    return new Galley(set, widthPx, heightPx, panels, balloons, keepClear, mouths, others);
  }

  public HouseStyle style() {
    return set.style();
  }

  /** The whole strip. */
  public Box extent() {
    return new Box(0, 0, widthPx, heightPx);
  }

  /** The box of a panel, if it has a place. */
  public Optional<PanelBox> panel(int number) {
    return Optional.ofNullable(panelByNumber.get(number));
  }

  /** The balloons of a panel, in script order. */
  public List<PlacedBalloon> balloonsOf(int panel) {
    return balloonsByPanel.getOrDefault(panel, List.of());
  }

  /** A speaker's mouth in a panel, if it is known. */
  public Optional<Mouth> mouth(int panel, String speaker) {
    return mouthsByPanel.getOrDefault(panel, List.of()).stream()
        .filter(mouth -> mouth.speaker().equalsIgnoreCase(speaker))
        .findFirst();
  }

  /** An index of balloons by their bounds, tails included. */
  public RegionIndex<PlacedBalloon> balloonIndex() {
    return RegionIndex.of(balloons, PlacedBalloon::reach);
  }
}
