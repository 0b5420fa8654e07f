package io.github.readfall.balloon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;

/** One search for an outline that several texts share; see {@link SharedFitter}. Used once. */
final class SharedSearch {

  /** The last step between the aspects that are tried, as a share: areas are as near. */
  static final double ASPECT_STEP = 0.001;

  private static final int GRID = 16;
  private static final int REFINED = 2;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
  private static final double HAIR = 1e-9;

  private final List<FitText> texts;
  private final Enclosure enclosure;
  private final List<Enclosed> own;
  private final double leastLog;
  private final double mostLog;

  private SharedSearch(List<FitText> texts, Enclosure enclosure, List<Enclosed> own) {
    this.texts = texts;
    this.enclosure = enclosure;
    this.own = own;
    double least = texts.stream().mapToDouble(text -> text.rules().minAspect()).max().orElseThrow();
    double most = texts.stream().mapToDouble(text -> text.rules().maxAspect()).min().orElseThrow();
    this.leastLog = StrictMath.log(least);
    this.mostLog = StrictMath.log(Math.max(least, most));
  }

  /** Empty where a text has no outline by itself. */
  static Optional<SharedSearch> of(List<FitText> texts, Enclosure enclosure) {
    List<Enclosed> own = new ArrayList<>();
    for (FitText text : texts) {
      Fitter.fit(text.table(), enclosure, text.rules()).ifPresent(fit -> own.add(fit.enclosed()));
    }
    return own.size() == texts.size()
        ? Optional.of(new SharedSearch(texts, enclosure, own))
        : Optional.empty();
  }

  SharedFit find() {
    int largest =
        IntStream.range(0, own.size())
            .boxed()
            .max(Comparator.comparingDouble(i -> own.get(i).areaPx2()))
            .orElseThrow();
    Set<Integer> deciding = new LinkedHashSet<>(List.of(largest));
    SharedFit best = new SharedFit(own.get(largest), largest);
    OptionalInt outside = outside(best.enclosed(), deciding);
    while (outside.isPresent()) {
      deciding.add(outside.getAsInt());
      best = smallest(deciding);
      outside = outside(best.enclosed(), deciding);
    }
    return best;
  }

  /** A text that does not go into an outline. */
  private OptionalInt outside(Enclosed outline, Set<Integer> deciding) {
    return IntStream.range(0, texts.size())
        .filter(i -> !deciding.contains(i) && !goesInto(i, outline))
        .findFirst();
  }

  private boolean goesInto(int text, Enclosed outline) {
    Enclosed alone = own.get(text);
    boolean covered =
        alone.halfWidthPx() <= outline.halfWidthPx()
            && alone.halfHeightPx() <= outline.halfHeightPx();
    return covered || at(text, outline.aspect(), outline.areaPx2()).exists();
  }

  /** The smallest outline of one aspect round a text; none where it is larger than allowed. */
  private Enclosed at(int text, double aspect, double atMostPx2) {
    FitText one = texts.get(text);
    double bound = atMostPx2 * (1 + HAIR);
    return Fitter.fit(one.table(), enclosure, one.rules().withAspect(aspect), bound)
        .map(Fit::enclosed)
        .filter(found -> found.areaPx2() <= bound)
        .orElse(Enclosed.NONE);
  }

  /** An outline at one aspect, by its logarithm. */
  private record Shared(double logAspect, SharedFit fit) {

    double areaPx2() {
      return fit.enclosed().areaPx2();
    }
  }

  /** The smallest outline that some texts share: a grid of aspects, then between its best. */
  private SharedFit smallest(Set<Integer> deciding) {
    double step = (mostLog - leastLog) / GRID;
    List<Shared> grid =
        IntStream.rangeClosed(0, GRID)
            .mapToObj(i -> shared(deciding, leastLog + step * i))
            .sorted(Comparator.comparingDouble(Shared::areaPx2))
            .toList();
    return grid.stream()
        .limit(REFINED)
        .map(start -> between(start.logAspect() - step, start.logAspect() + step, deciding))
        .min(Comparator.comparingDouble(Shared::areaPx2))
        .filter(refined -> refined.areaPx2() < grid.get(0).areaPx2())
        .orElse(grid.get(0))
        .fit();
  }

  /** Golden-section search (Kiefer 1953, Proceedings of the AMS 4(3)). */
  private Shared between(double fromLog, double toLog, Set<Integer> deciding) {
    double low = Math.max(leastLog, fromLog);
    double high = Math.min(mostLog, toLog);
    Shared left = shared(deciding, high - GOLDEN * (high - low));
    Shared right = shared(deciding, low + GOLDEN * (high - low));
    while (high - low > ASPECT_STEP) {
      if (left.areaPx2() < right.areaPx2()) {
        high = right.logAspect();
        right = left;
        left = shared(deciding, high - GOLDEN * (high - low));
      } else {
        low = left.logAspect();
        left = right;
        right = shared(deciding, low + GOLDEN * (high - low));
      }
    }
    return left.areaPx2() < right.areaPx2() ? left : right;
  }

  /**
   * What holds every text's outline at one aspect. Where the strip is too narrow for that aspect,
   * outlines are as wide as it allows and higher.
   */
  private Shared shared(Set<Integer> deciding, double logAspect) {
    double aspect = StrictMath.exp(logAspect);
    Enclosed all = new Enclosed(0, 0, 0, 0);
    int decidedBy = -1;
    for (int text : deciding) {
      Enclosed one = at(text, aspect, Double.POSITIVE_INFINITY);
      decidedBy = one.areaPx2() > all.areaPx2() ? text : decidedBy;
      all = around(all, one);
    }
    return new Shared(logAspect, new SharedFit(all, decidedBy));
  }

  /** The outline as wide as the wider of two and as high as the higher. */
  private static Enclosed around(Enclosed all, Enclosed one) {
    double halfWidth = Math.max(all.halfWidthPx(), one.halfWidthPx());
    double halfHeight = Math.max(all.halfHeightPx(), one.halfHeightPx());
    double perBox = one.areaPx2() / (one.halfWidthPx() * one.halfHeightPx());
    return new Enclosed(halfWidth, halfHeight, 0, perBox * halfWidth * halfHeight);
  }
}
