package io.github.readfall.rules.space;

import io.github.readfall.base.geom.Box;
import io.github.readfall.rules.model.CheckedStrip;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The heights of a strip at which a cut crosses nothing.
 *
 * @param gaps from top to bottom, disjoint; one may have no height, if one obstacle ends as the
 *     next begins
 */
record FreeHeights(List<Stretch> gaps) {

  /** Distance of a cut from what it spares, if there is room. House default, no source. */
  private static final double AIR_PX = 8;

  /** A part of the strip from one height to another. */
  record Stretch(double topPx, double bottomPx) {

    static Stretch of(Box box) {
      return new Stretch(box.y(), box.bottom());
    }

    /** Returns true if a cut at a height is inside it, not only at its edge. */
    boolean holds(double heightPx) {
      return topPx + CheckedStrip.HAIR_PX < heightPx && heightPx < bottomPx - CheckedStrip.HAIR_PX;
    }

    private double nearest(double heightPx) {
      return Math.max(topPx, Math.min(bottomPx, heightPx));
    }

    private Optional<Stretch> within(Stretch other) {
      double top = Math.max(topPx, other.topPx);
      double bottom = Math.min(bottomPx, other.bottomPx);
      return top <= bottom ? Optional.of(new Stretch(top, bottom)) : Optional.empty();
    }

    /** The nearest height with some air on either side, on a whole pixel if one is free. */
    private double nearestWithAir(double heightPx) {
      double airPx = Math.min(AIR_PX, (bottomPx - topPx) / 2);
      double aired = new Stretch(topPx + airPx, bottomPx - airPx).nearest(heightPx);
      double whole = Math.rint(aired);
      return topPx <= whole && whole <= bottomPx ? whole : aired;
    }
  }

  FreeHeights {
    gaps = List.copyOf(gaps);
  }

  /** The heights that a strip leaves free. */
  static FreeHeights of(List<Stretch> taken, double heightPx) {
    List<Stretch> gaps = new ArrayList<>();
    double reachedPx = 0;
    for (Stretch one : taken.stream().sorted(Comparator.comparingDouble(Stretch::topPx)).toList()) {
      if (one.topPx() >= reachedPx - CheckedStrip.HAIR_PX) {
        gaps.add(new Stretch(reachedPx, Math.max(reachedPx, one.topPx())));
      }
      reachedPx = Math.max(reachedPx, one.bottomPx());
    }
    if (reachedPx <= heightPx) {
      gaps.add(new Stretch(reachedPx, heightPx));
    }
    return new FreeHeights(gaps);
  }

  /** The distance of a cut from the nearest free height in a range; empty if there is none. */
  OptionalDouble distancePx(double cutPx, Stretch range) {
    return gaps.stream()
        .flatMap(gap -> gap.within(range).stream())
        .mapToDouble(gap -> Math.abs(gap.nearest(cutPx) - cutPx))
        .min();
  }

  /** The free height in a range that is nearest to a cut, with some air if there is room. */
  OptionalDouble nearest(double cutPx, Stretch range) {
    return gaps.stream()
        .flatMap(gap -> gap.within(range).stream())
        .min(Comparator.comparingDouble(gap -> Math.abs(gap.nearest(cutPx) - cutPx)))
        .map(gap -> OptionalDouble.of(gap.nearestWithAir(cutPx)))
        .orElse(OptionalDouble.empty());
  }
}
