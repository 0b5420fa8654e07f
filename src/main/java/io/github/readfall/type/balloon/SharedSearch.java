package io.github.readfall.type.balloon;

import io.github.readfall.base.OneCall;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;

/** One search for an outline that several texts share; see {@link SharedFitter}. Used once. */
@OneCall
final class SharedSearch {

  /** The last step between the aspects that are tried, as a share: areas are as near. */
  static final double ASPECT_STEP = 0.001;

  private static final int GRID = 48;

  /** A valley on the grid is at most this many times as large as its lowest place. */
  private static final double NEARLY = 1.02;

  private static final int VALLEYS = 4;

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

  /** A search; empty if a text alone has no outline. */
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

  /** A text that does not fit an outline. */
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
    FitText one = texts.get(text);
    double atMost = outline.areaPx2() * (1 + HAIR);
    return covered
        || Fitter.hasFit(one.table(), enclosure, one.rules().withAspect(outline.aspect()), atMost);
  }

  /** An outline at one aspect, by its logarithm. */
  private record Shared(double logAspect, SharedFit fit) {

    double areaPx2() {
      return fit.enclosed().areaPx2();
    }
  }

  /**
   * The smallest outline that some texts share: the best of a grid of aspects and of those that are
   * nearly as good, then from each by ever smaller steps, since there may be several valleys.
   */
  private SharedFit smallest(Set<Integer> deciding) {
    double step = (mostLog - leastLog) / GRID;
    double least = Double.POSITIVE_INFINITY;
    List<Shared> grid = new ArrayList<>();
    for (double logAspect : fromTheMiddle(deciding, step)) {
      Shared none = new Shared(logAspect, new SharedFit(new Enclosed(0, 0, 0, least * NEARLY), -1));
      Shared here = better(none, deciding, logAspect);
      if (here.areaPx2() < none.areaPx2()) {
        grid.add(here);
        least = Math.min(least, here.areaPx2());
      }
    }
    return grid.stream()
        .sorted(Comparator.comparingDouble(Shared::areaPx2))
        .limit(VALLEYS)
        .map(start -> refined(start, deciding, step))
        .min(Comparator.comparingDouble(Shared::areaPx2))
        .map(Shared::fit)
        .orElseGet(() -> new SharedFit(Enclosed.NONE, -1));
  }

  private Shared refined(Shared start, Set<Integer> deciding, double step) {
    Shared best = start;
    for (double by = step / 2; by > ASPECT_STEP / 2; by /= 2) {
      Shared before = best;
      best = better(best, deciding, before.logAspect() - by);
      best = better(best, deciding, before.logAspect() + by);
    }
    return best;
  }

  /** The grid, nearest first to the middle of the aspects that the texts have by themselves. */
  private List<Double> fromTheMiddle(Set<Integer> deciding, double step) {
    double middle =
        deciding.stream()
            .mapToDouble(text -> StrictMath.log(own.get(text).aspect()))
            .average()
            .orElseThrow();
    return IntStream.rangeClosed(0, GRID)
        .mapToObj(i -> leastLog + step * i)
        .sorted(Comparator.comparingDouble(at -> Math.abs(at - middle)))
        .toList();
  }

  /**
   * The outline that holds every text's at one aspect, if it is smaller than the best so far. If
   * the strip is too narrow for the aspect, outlines are as wide as it allows and higher.
   */
  private Shared better(Shared best, Set<Integer> deciding, double logAspect) {
    if (logAspect < leastLog || logAspect > mostLog) {
      return best;
    }
    double aspect = StrictMath.exp(logAspect);
    Enclosed all = new Enclosed(0, 0, 0, 0);
    int decidedBy = -1;
    for (int text : deciding) {
      Enclosed one = at(text, aspect, best.areaPx2());
      decidedBy = one.areaPx2() > all.areaPx2() ? text : decidedBy;
      all = one.exists() ? around(all, one) : one;
      if (!(all.areaPx2() < best.areaPx2())) {
        return best;
      }
    }
    return new Shared(logAspect, new SharedFit(all, decidedBy));
  }

  /** The smallest outline of one aspect round a text; none if it is larger than allowed. */
  private Enclosed at(int text, double aspect, double atMostPx2) {
    FitText one = texts.get(text);
    return Fitter.fit(one.table(), enclosure, one.rules().withAspect(aspect), atMostPx2)
        .map(Fit::enclosed)
        .orElse(Enclosed.NONE);
  }

  /** The outline as wide as the wider of two and as high as the higher. */
  private static Enclosed around(Enclosed all, Enclosed one) {
    double halfWidth = Math.max(all.halfWidthPx(), one.halfWidthPx());
    double halfHeight = Math.max(all.halfHeightPx(), one.halfHeightPx());
    double perBox = one.areaPx2() / (one.halfWidthPx() * one.halfHeightPx());
    return new Enclosed(halfWidth, halfHeight, 0, perBox * halfWidth * halfHeight);
  }
}
