package io.github.readfall.job.polyglot;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.lettering.typeset.BalloonRequest;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.lettering.typeset.Tightening;
import io.github.readfall.rules.RuleBook;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.space.FreeRoom;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.galley.Compositor;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.type.balloon.ShapeKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Sets editions into the outlines of a finished strip, and tells what each cue needs. */
public final class EditionFitter {

  /** An outline this much larger than it must be, so that rounding takes nothing away. */
  private static final double HAIR = 1.0005;

  /** Directions in which a balloon may grow: evenly first. */
  private static final List<XY> SIDES =
      List.of(
          new XY(0, 0),
          new XY(0, 1),
          new XY(0, -1),
          new XY(1, 0),
          new XY(-1, 0),
          new XY(1, 1),
          new XY(-1, 1),
          new XY(1, -1),
          new XY(-1, -1));

  private final Galley original;
  private final Layout layout;

  /**
   * A fitter for one strip.
   *
   * @param original the strip in its own language
   * @param layout of that strip
   */
  public EditionFitter(Galley original, Layout layout) {
    this.original = original;
    this.layout = layout;
  }

  /** Sets an edition of the strip's script into its outlines. */
  public FittedEdition fit(Edition edition) {
    SetEpisode usual = edition.typesetter().set(edition.script(), outlines());
    return fit(edition, usual, Map.of());
  }

  /**
   * Sets an edition again after some of its words changed; unchanged cues are reused, except
   * effects, which depend on what is around them.
   *
   * @param before the same edition as this fitter set it last
   */
  public FittedEdition again(Edition edition, FittedEdition before) {
    SetEpisode usual =
        edition.typesetter().setAgain(edition.script(), outlines(), before.galley().set());
    Map<String, Refit> known =
        before.cues().stream()
            .filter(cue -> cue.refit().balloon().look().shape() != ShapeKind.NONE)
            .collect(Collectors.toMap(FittedCue::id, FittedCue::refit));
    return fit(edition, usual, known);
  }

  private FittedEdition fit(Edition edition, SetEpisode usual, Map<String, Refit> known) {
    CheckedStrip asUsual = CheckedStrip.of(Compositor.compose(usual, layout, original.cuts()));
    List<Refit> refits =
        new Refitter(edition, usual, effect -> isUnhampered(effect, asUsual)).refits(known);
    Map<String, SetBalloon> refitted =
        refits.stream().collect(Collectors.toMap(r -> r.balloon().cue().id(), Refit::balloon));
    List<SetBalloon> balloons =
        usual.balloons().stream()
            .map(balloon -> refitted.getOrDefault(balloon.cue().id(), balloon))
            .toList();
    SetEpisode set = edition.typesetter().episode(edition.script(), balloons);
    CheckedStrip strip = CheckedStrip.of(Compositor.compose(set, layout, original.cuts()));
    List<FittedCue> cues =
        refits.stream()
            .filter(refit -> edition.isSaid(refit.balloon().cue().id()))
            .map(refit -> judged(refit, edition, strip))
            .toList();
    return new FittedEdition(edition, cues, strip.galley(), findings(edition, set, strip));
  }

  private static boolean isUnhampered(SetBalloon effect, CheckedStrip strip) {
    return strip.galley().balloonsOf(effect.cue().panel()).stream()
        .filter(balloon -> balloon.id().equals(effect.cue().id()))
        .allMatch(balloon -> FreeRoom.isFree(balloon, strip));
  }

  /** The requests of every balloon of the strip to the words for it. */
  private Map<String, BalloonRequest> outlines() {
    Map<String, BalloonRequest> outlines = new HashMap<>();
    for (PlacedBalloon balloon : original.balloons()) {
      outlines.put(
          balloon.id(),
          new BalloonRequest(
              Optional.of(balloon.set().look().shape()),
              Optional.of(balloon.box()),
              OptionalDouble.empty(),
              OptionalDouble.empty()));
    }
    return outlines;
  }

  private FittedCue judged(Refit refit, Edition edition, CheckedStrip strip) {
    boolean expected = edition.expected().contains(refit.balloon().cue().id());
    return new FittedCue(refit, verdict(refit, edition, strip), expected);
  }

  private static Verdict verdict(Refit refit, Edition edition, CheckedStrip strip) {
    if (refit.goesIn()) {
      return refit.isAsUsual() ? Verdict.AS_IS : Verdict.TIGHTER;
    }
    return strip.galley().balloonsOf(refit.balloon().cue().panel()).stream()
            .filter(balloon -> balloon.id().equals(refit.balloon().cue().id()))
            .flatMap(balloon -> grown(balloon, refit, edition))
            .anyMatch(balloon -> FreeRoom.isFree(balloon, strip))
        ? Verdict.LARGER
        : Verdict.SHORTER;
  }

  /** A balloon as large as its words need: grown to all sides alike, or all to one. */
  private static Stream<PlacedBalloon> grown(PlacedBalloon balloon, Refit refit, Edition edition) {
    Box box = balloon.box();
    double width = box.width() * refit.growBy() * HAIR;
    double height = box.height() * refit.growBy() * HAIR;
    BalloonRequest wanted =
        balloon.set().wanted().in(new Box(0, 0, width, height)).tightened(Tightening.NONE);
    SetBalloon larger = edition.typesetter().setAgain(balloon.set(), edition.script(), wanted);
    double across = (width - box.width()) / 2;
    double along = (height - box.height()) / 2;
    return SIDES.stream()
        .map(side -> box.centre().plus(side.x() * across, side.y() * along))
        .map(middle -> at(middle, larger, balloon));
  }

  private static PlacedBalloon at(XY middle, SetBalloon larger, PlacedBalloon balloon) {
    XY at = middle.plus(-larger.box().width() / 2, -larger.box().height() / 2);
    return PlacedBalloon.of(
        larger,
        at,
        balloon.tails().stream()
            .flatMap(tail -> Compositor.tail(larger, at, tail.tip()).stream())
            .toList(),
        balloon.pinned(),
        balloon.bleed());
  }

  private static List<Finding> findings(Edition edition, SetEpisode set, CheckedStrip strip) {
    List<Finding> findings = new ArrayList<>(edition.findings());
    findings.addAll(set.findings());
    findings.addAll(RuleBook.check(strip));
    return findings.stream()
        .map(f -> f.withSeverity(set.style().severity(f.rule(), f.severity())))
        .toList();
  }
}
