package io.github.readfall.rules.space;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.style.Delivery;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.rules.space.FreeHeights.Stretch;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * A cut through a balloon or its tail or, less severe, through a panel although a cut between
 * panels was possible. The pieces of a strip are loaded and shown one by one.
 */
final class CutThrough implements Rule {

  private static final int MOST_NAMED = 3;

  /** Share of the greatest height below which a piece is no gain. House default, no source. */
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

    /** The range of heights for the cut if the other cuts after it move too. */
    Stretch range() {
      double leastPx = beforePx + LEAST_PIECE * Math.min(mostPx, atPx - beforePx);
      return new Stretch(leastPx, Math.min(beforePx + mostPx, afterPx));
    }

    /**
     * The range of heights for the cut if the other cuts stay: no piece exceeds the greatest
     * height.
     */
    Stretch rangeAlone() {
      double leastPx = afterPx - Math.max(mostPx, afterPx - atPx);
      return new Stretch(Math.max(range().topPx(), leastPx), range().bottomPx());
    }

    Phrase through(String what) {
      return Phrase.of("The cut")
          .either(" at " + Math.round(atPx) + " px", "")
          .then(", which ends a " + (ofPage ? "canvas page" : "slice"))
          .then(", goes through " + what + ".");
    }

    Phrase betterAt(double px) {
      return Phrase.of("Cut ")
          .either(
              "at " + Math.round(px) + " px",
              Math.round(Math.abs(px - atPx)) + (px < atPx ? " px higher" : " px lower"))
          .then(", where no panel is.");
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
  private record CutStrip(
      Galley galley, List<Whole> balloons, FreeHeights clear, FreeHeights betweenBalloons) {

    static CutStrip of(CheckedStrip strip) {
      Galley galley = strip.galley();
      List<Whole> balloons =
          galley.balloons().stream()
              .collect(groupingBy(strip::chain, LinkedHashMap::new, toList()))
              .values()
              .stream()
              .map(Whole::of)
              .toList();
      List<Stretch> lettered = balloons.stream().map(Whole::taken).toList();
      List<Stretch> all = new ArrayList<>(lettered);
      galley.panels().forEach(panel -> all.add(Stretch.of(panel.box())));
      return new CutStrip(
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
  public RuleSpec spec() {
    return RuleSpec.CUT;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    List<Cut> cuts = cuts(galley);
    if (cuts.isEmpty()) {
      return Stream.empty();
    }
    CutStrip cuttable = CutStrip.of(strip);
    return cuts.stream().flatMap(cut -> check(cut, cuttable));
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

  private Stream<Finding> check(Cut cut, CutStrip cuttable) {
    double limitPx = RuleSpec.CUT.limitIn(cuttable.galley().style());
    List<PlacedBalloon> balloons = cuttable.balloonsAt(cut.atPx());
    if (!balloons.isEmpty()) {
      return cuttable
          .betweenBalloons()
          .distancePx(cut.atPx(), Stretch.of(cuttable.galley().extent()))
          .stream()
          .filter(px -> px > limitPx)
          .mapToObj(
              px ->
                  throughBalloons(cut, balloons, cuttable)
                      .measured(px, limitPx, RuleSpec.CUT.unit()));
    }
    List<PanelBox> panels = cuttable.panelsAt(cut.atPx());
    return panels.isEmpty()
        ? Stream.empty()
        : cuttable.clear().distancePx(cut.atPx(), cut.range()).stream()
            .filter(px -> px > limitPx)
            .mapToObj(
                px ->
                    throughPanel(cut, panels, cuttable).measured(px, limitPx, RuleSpec.CUT.unit()));
  }

  private Finding throughBalloons(Cut cut, List<PlacedBalloon> balloons, CutStrip cuttable) {
    String names =
        NumberText.list(balloons, MOST_NAMED, balloon -> BalloonFinding.name(balloon.set()));
    Phrase advice =
        Phrase.of("Cut where there is no balloon, or move what is in the way of the cut.");
    List<SetBalloon> set = balloons.stream().map(PlacedBalloon::set).toList();
    Box reach = balloons.stream().map(PlacedBalloon::reach).reduce(Box::union).orElseThrow();
    return withFix(
        BalloonFinding.of(set, RuleSpec.CUT, cut.through(names), advice).at(reach), cut, cuttable);
  }

  private Finding throughPanel(Cut cut, List<PanelBox> panels, CutStrip cuttable) {
    PanelBox first = panels.get(0);
    Phrase message = cut.through("panel " + first.panel() + ", which could be spared");
    Phrase advice =
        cuttable.clear().nearest(cut.atPx(), cut.range()).stream()
            .mapToObj(cut::betterAt)
            .findFirst()
            .orElseThrow();
    Where where = where(first.panel(), cuttable.galley());
    Finding finding =
        Finding.of(RuleSpec.CUT.id(), Severity.WARNING, where, message, advice).at(first.box());
    return withFix(finding, cut, cuttable);
  }

  private static Where where(int panel, Galley galley) {
    OptionalInt line =
        galley.set().script().panels().stream()
            .filter(one -> one.number() == panel)
            .mapToInt(one -> one.line())
            .findFirst();
    return new Where("", line, OptionalInt.empty(), OptionalInt.of(panel), List.of());
  }

  /** The finding with a better height for the cut, if layout.json can express it. */
  private static Finding withFix(Finding finding, Cut cut, CutStrip cuttable) {
    if (!cut.ofPage()) {
      return finding;
    }
    Stretch range = cut.rangeAlone();
    return Stream.of(cuttable.clear(), cuttable.betweenBalloons())
        .flatMapToDouble(free -> free.nearest(cut.atPx(), range).stream())
        .boxed()
        .findFirst()
        .map(to -> finding.withFix(new Fix.MoveCut(cut.atPx(), to)))
        .orElse(finding);
  }
}
