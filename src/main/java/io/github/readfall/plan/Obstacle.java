package io.github.readfall.plan;

import io.github.readfall.galley.Galley;
import io.github.readfall.galley.PlacedBalloon;
import io.github.readfall.geom.Box;
import io.github.readfall.strip.Layout;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a cut should not go through, by its height alone: a cut crosses the whole strip.
 *
 * @param topPx in strip pixels
 * @param bottomPx not less than {@code topPx}
 * @param kind what it is
 */
public record Obstacle(double topPx, double bottomPx, Kind kind) {

  /** What a cut may go through, the worse last. */
  public enum Kind {
    PANEL,
    /** A balloon with its tail. */
    BALLOON
  }

  /** Panels and balloons of a galley, tails and the necks between joined balloons included. */
  public static List<Obstacle> of(Galley galley) {
    Map<String, PlacedBalloon> byId =
        galley.balloons().stream().collect(Collectors.toMap(PlacedBalloon::id, b -> b));
    return Stream.concat(
            galley.panels().stream().map(panel -> of(panel.box(), Kind.PANEL)),
            galley.balloons().stream().map(placed -> of(withPartner(placed, byId), Kind.BALLOON)))
        .toList();
  }

  private static Box withPartner(PlacedBalloon balloon, Map<String, PlacedBalloon> byId) {
    Box own = balloon.reach();
    return balloon
        .set()
        .joinedTo()
        .flatMap(id -> Optional.ofNullable(byId.get(id)))
        .map(partner -> own.union(partner.box()))
        .orElse(own);
  }

  /** Panels of a layout, and words where they are to be expected. */
  public static List<Obstacle> of(Layout layout, List<MetWords> words) {
    return Stream.concat(
            layout.panels().stream().map(panel -> of(panel.box(), Kind.PANEL)),
            words.stream()
                .filter(some -> some.bottomPx() > some.topPx())
                .map(some -> new Obstacle(some.topPx(), some.bottomPx(), Kind.BALLOON)))
        .toList();
  }

  private static Obstacle of(Box box, Kind kind) {
    return new Obstacle(box.y(), box.bottom(), kind);
  }
}
