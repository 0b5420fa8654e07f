package io.github.readfall.rules;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.style.Delivery;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.rules.FreeHeights.Stretch;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * A cut through a balloon or its tail or, which is less grave, through a panel where a cut between
 * panels was possible. The pieces of a strip are loaded and shown one by one.
 */
final class CutThrough implements Rule {

  private static final String ID = "space/cut";

  private static final int MOST_NAMED = 3;

  /**
   * A piece shorter than this share of the greatest height is no gain. House default, no source.
   */
  private static final double LEAST_PIECE = 0.5;

  /**
   * A cut and its neighbours.
   *
   * @param atPx its height
   * @param beforePx the cut before, or the strip's top
   * @param afterPx the cut after, or the strip's end
   * @param mostPx greatest height of a piece
   * @param ofPage whether it ends a canvas page; else a slice
   */
  private record Cut(double atPx, double beforePx, double afterPx, double mostPx, boolean ofPage) {

    /** Where it could be, the other cuts after it moving too. */
    Stretch range() {
      double leastPx = beforePx + LEAST_PIECE * Math.min(mostPx, atPx - beforePx);
      return new Stretch(leastPx, Math.min(beforePx + mostPx, afterPx));
    }

    /** Where it could be, the other cuts staying: no piece grows past the greatest height. */
    Stretch rangeAlone() {
      double leastPx = afterPx - Math.max(mostPx, afterPx - atPx);
      return new Stretch(Math.max(range().topPx(), leastPx), range().bottomPx());
    }

    String name() {
      return "The cut at "
          + Math.round(atPx)
          + " px, which ends a "
          + (ofPage ? "canvas page" : "slice")
          + ", goes through ";
    }
  }

  /** A connected balloon, the necks between its parts included. */
  private record Whole(List<PlacedBalloon> parts, Stretch taken) {

    static Whole of(List<PlacedBalloon> parts) {
      Box reach = parts.stream().map(PlacedBalloon::reach).reduce(Box::union).orElseThrow();
      return new Whole(parts, new Stretch(reach.y(), reach.bottom()));
    }
  }

  /**
   * A strip, and where it may be cut: through nothing at all, and through panels but no balloon.
   */
  private record Strip(
      Galley galley, List<Whole> balloons, FreeHeights clear, FreeHeights betweenBalloons) {

    static Strip of(Galley galley) {
      Neighbourhood around = Neighbourhood.of(galley);
      List<Whole> balloons =
          galley.balloons().stream()
              .collect(groupingBy(around::chain, LinkedHashMap::new, toList()))
              .values()
              .stream()
              .map(Whole::of)
              .toList();
      List<Stretch> lettered = balloons.stream().map(Whole::taken).toList();
      List<Stretch> all = new ArrayList<>(lettered);
      galley.panels().forEach(panel -> all.add(Stretch.of(panel.box())));
      return new Strip(
          galley,
          balloons,
          FreeHeights.of(all, galley.heightPx()),
          FreeHeights.of(lettered, galley.heightPx()));
    }

    List<PlacedBalloon> balloonsAt(double heightPx) {
      return balloons.stream()
          .filter(whole -> whole.taken().holds(heightPx))
          .flatMap(whole -> whole.parts().stream())
          .toList();
    }

    List<PanelBox> panelsAt(double heightPx) {
      return galley.panels().stream()
          .filter(panel -> Stretch.of(panel.box()).holds(heightPx))
          .toList();
    }
  }

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Severity severity() {
    return Severity.ERROR;
  }

  @Override
  public Stream<Finding> check(Galley galley) {
    List<Cut> cuts = cuts(galley);
    if (cuts.isEmpty()) {
      return Stream.empty();
    }
    Strip strip = Strip.of(galley);
    return cuts.stream().flatMap(cut -> check(cut, strip));
  }

  private static List<Cut> cuts(Galley galley) {
    Delivery delivery = galley.style().delivery();
    double slicePx = delivery.maxSliceHeightPx() * galley.widthPx() / delivery.widthPx();
    List<Cut> cuts = new ArrayList<>();
    cuts.addAll(cuts(galley.cuts().pages(), galley.style().strip().pageHeightPx(), true, galley));
    cuts.addAll(cuts(galley.cuts().slices(), slicePx, false, galley));
    return cuts;
  }

  private static List<Cut> cuts(
      List<Double> heights, double mostPx, boolean ofPage, Galley galley) {
    List<Cut> cuts = new ArrayList<>();
    for (int i = 0; i < heights.size(); i++) {
      double before = i == 0 ? 0 : heights.get(i - 1);
      double after = i + 1 == heights.size() ? galley.heightPx() : heights.get(i + 1);
      cuts.add(new Cut(heights.get(i), before, after, mostPx, ofPage));
    }
    return cuts;
  }

  private Stream<Finding> check(Cut cut, Strip strip) {
    double limitPx = strip.galley().style().limit(ID, 0);
    List<PlacedBalloon> balloons = strip.balloonsAt(cut.atPx());
    if (!balloons.isEmpty()) {
      return strip
          .betweenBalloons()
          .distancePx(cut.atPx(), Stretch.of(strip.galley().extent()))
          .stream()
          .filter(px -> px > limitPx)
          .mapToObj(px -> throughBalloons(cut, balloons, strip).measured(px, limitPx, "px"));
    }
    List<PanelBox> panels = strip.panelsAt(cut.atPx());
    return panels.isEmpty()
        ? Stream.empty()
        : strip.clear().distancePx(cut.atPx(), cut.range()).stream()
            .filter(px -> px > limitPx)
            .mapToObj(px -> throughPanel(cut, panels, strip).measured(px, limitPx, "px"));
  }

  private Finding throughBalloons(Cut cut, List<PlacedBalloon> balloons, Strip strip) {
    String names = NumberWords.list(balloons, MOST_NAMED, balloon -> Fault.name(balloon.set()));
    String advice = "Cut where there is no balloon, or move what stands in the way of the cut.";
    List<SetBalloon> set = balloons.stream().map(PlacedBalloon::set).toList();
    Box reach = balloons.stream().map(PlacedBalloon::reach).reduce(Box::union).orElseThrow();
    return mended(Fault.in(set, this, cut.name() + names + ".", advice).at(reach), cut, strip);
  }

  private Finding throughPanel(Cut cut, List<PanelBox> panels, Strip strip) {
    PanelBox first = panels.get(0);
    String message = cut.name() + "panel " + first.panel() + ", which could be spared.";
    String advice =
        strip.clear().nearest(cut.atPx(), cut.range()).stream()
            .mapToObj(at -> "Cut at " + Math.round(at) + " px, where no panel is.")
            .findFirst()
            .orElseThrow();
    Where where = where(first.panel(), strip.galley());
    Finding finding = Finding.of(ID, Severity.WARNING, where, message, advice).at(first.box());
    return mended(finding, cut, strip);
  }

  private static Where where(int panel, Galley galley) {
    OptionalInt line =
        galley.set().script().panels().stream()
            .filter(one -> one.number() == panel)
            .mapToInt(one -> one.line())
            .findFirst();
    return new Where("", line, OptionalInt.empty(), OptionalInt.of(panel), List.of());
  }

  /** With a better height for the cut, if it is one that layout.json can say. */
  private static Finding mended(Finding finding, Cut cut, Strip strip) {
    if (!cut.ofPage()) {
      return finding;
    }
    Stretch range = cut.rangeAlone();
    return Stream.of(strip.clear(), strip.betweenBalloons())
        .flatMapToDouble(free -> free.nearest(cut.atPx(), range).stream())
        .boxed()
        .findFirst()
        .map(to -> finding.withFix(new Fix.MoveCut(cut.atPx(), to)))
        .orElse(finding);
  }
}
