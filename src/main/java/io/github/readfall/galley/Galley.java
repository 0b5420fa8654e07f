package io.github.readfall.galley;

import io.github.readfall.geom.Box;
import io.github.readfall.geom.RegionIndex;
import io.github.readfall.strip.Cuts;
import io.github.readfall.strip.KeepClear;
import io.github.readfall.strip.Mouth;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.style.HouseStyle;
import io.github.readfall.typeset.SetEpisode;
import java.util.List;
import java.util.Optional;

/**
 * A strip with every balloon in its place: what is checked and drawn. Lengths are strip pixels.
 *
 * @param set the episode with every cue set
 * @param widthPx of the strip; positive
 * @param heightPx of the strip; 0 before anything is placed
 * @param panels in script order; a panel of the script that has no place yet is not among them
 * @param balloons in script order; those of {@code set} that have a place
 * @param keepClear what nothing may cover
 * @param mouths where speakers' mouths are known
 * @param cuts where the strip is cut
 */
public record Galley(
    SetEpisode set,
    double widthPx,
    double heightPx,
    List<PanelBox> panels,
    List<PlacedBalloon> balloons,
    List<KeepClear> keepClear,
    List<Mouth> mouths,
    Cuts cuts) {

  public Galley {
    panels = List.copyOf(panels);
    balloons = List.copyOf(balloons);
    keepClear = List.copyOf(keepClear);
    mouths = List.copyOf(mouths);
  }

  /** An episode before any of it has a place. */
  public static Galley unplaced(SetEpisode set) {
    double widthPx = set.style().strip().widthPx();
    return new Galley(set, widthPx, 0, List.of(), List.of(), List.of(), List.of(), Cuts.NONE);
  }

  /** The same strip cut elsewhere. */
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

  /** Where a panel is, if it has a place. */
  public Optional<PanelBox> panel(int number) {
    return panels.stream().filter(panel -> panel.panel() == number).findFirst();
  }

  /** The balloons of a panel, in script order. */
  public List<PlacedBalloon> balloonsOf(int panel) {
    return balloons.stream().filter(balloon -> balloon.panel() == panel).toList();
  }

  /** Where a speaker's mouth is in a panel, if it is known. */
  public Optional<Mouth> mouth(int panel, String speaker) {
    return mouths.stream()
        .filter(mouth -> mouth.panel() == panel && mouth.speaker().equalsIgnoreCase(speaker))
        .findFirst();
  }

  /** Finds balloons by where they reach, tails included. */
  public RegionIndex<PlacedBalloon> balloonIndex() {
    return RegionIndex.of(balloons, PlacedBalloon::reach);
  }
}
