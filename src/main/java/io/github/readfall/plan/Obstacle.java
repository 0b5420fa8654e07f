package io.github.readfall.plan;

import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.typeset.SetLine;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.type.text.LineBox;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A length of the strip that a cut should not cross; a cut goes right across the strip.
 *
 * @param topPx in strip pixels
 * @param bottomPx not less than {@code topPx}
 * @param kind of the obstacle
 */
public record Obstacle(double topPx, double bottomPx, Kind kind) {

  /** What a cut may cross, the worst last. */
  public enum Kind {
    PANEL,
    /** A balloon with its tail. */
    BALLOON,
    /** A line of text. */
    LETTERS
  }

  /**
   * Panels, balloons and lines of text of a galley, with tails and the necks between joined
   * balloons.
   */
  public static List<Obstacle> of(Galley galley) {
    Map<String, PlacedBalloon> byId =
        galley.balloons().stream().collect(Collectors.toMap(PlacedBalloon::id, b -> b));
    List<Obstacle> all = new ArrayList<>();
    galley.panels().forEach(panel -> all.add(of(panel.box(), Kind.PANEL)));
    for (PlacedBalloon placed : galley.balloons()) {
      all.add(of(withPartner(placed, byId), Kind.BALLOON));
      placed.set().lines().forEach(line -> all.add(letters(placed, line)));
    }
    return List.copyOf(all);
  }

  private static Obstacle letters(PlacedBalloon balloon, SetLine set) {
    double baseline = balloon.at().y() + set.baselinePx();
    LineBox box = set.line().box();
    return new Obstacle(baseline + box.top(), baseline + box.bottom(), Kind.LETTERS);
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

  /** Panels of a layout, and words at their expected places. */
  public static List<Obstacle> of(Layout layout, List<ReadWords> words) {
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
