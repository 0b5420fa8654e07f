package io.github.readfall.job.polyglot;

import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.typeset.GivenFit;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.lettering.typeset.Tightening;
import io.github.readfall.rules.legible.TightestReadable;
import io.github.readfall.type.balloon.ShapeKind;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Sets cues into outlines that were made for other words. Text that does not fit as usual is
 * tightened as little as needed, in the order in which a reader notices it least: leading,
 * letterspacing, both, then size; never beyond what a reader can read ({@link TightestReadable}).
 * The order is a house default, no source.
 */
final class Refitter {

  /** Factor for a size just inside the outline, so that rounding takes nothing away. */
  private static final double HAIR = 0.9995;

  private static final double SAME_PX = 0.02;

  /**
   * Shares of the allowed leading and letterspacing that are used, from the least visible to the
   * most.
   */
  private static final List<Step> STEPS =
      List.of(new Step(0.5, 0), new Step(1, 0), new Step(0, 0.5), new Step(0, 1), new Step(1, 1));

  private record Step(double leadingShare, double trackingShare) {

    Tightening of(Tightening tightest) {
      return new Tightening(
          1, 1 - leadingShare * (1 - tightest.leading()), trackingShare * tightest.trackingEm());
    }
  }

  private final Edition edition;
  private final SetEpisode set;
  private final Predicate<SetBalloon> unhampered;

  /**
   * A refitter of an edition.
   *
   * @param set the edition, every cue set as usual into its given outline
   * @param unhampered true for an effect without an outline that is in no balloon's way
   */
  Refitter(Edition edition, SetEpisode set, Predicate<SetBalloon> unhampered) {
    this.edition = edition;
    this.set = set;
    this.unhampered = unhampered;
  }

  /**
   * Every balloon that has an outline, in script order.
   *
   * @param known earlier fits of cues in the same outlines, by their ids; reused if their words are
   *     the same
   */
  List<Refit> refits(Map<String, Refit> known) {
    return set.balloons().stream()
        .filter(balloon -> balloon.wanted().box().isPresent())
        .map(
            usual ->
                Optional.ofNullable(known.get(usual.cue().id()))
                    .filter(refit -> refit.balloon().cue().equals(usual.cue()))
                    .orElseGet(() -> refit(usual)))
        .toList();
  }

  private Refit refit(SetBalloon usual) {
    if (goesIn(usual) || (isUnboxed(usual) && unhampered.test(usual))) {
      return new Refit(usual, true, 1, 0);
    }
    Tightening tightest = TightestReadable.of(usual, set);
    double growBy = growBy(usual);
    return Stream.concat(STEPS.stream().map(step -> step.of(tightest)), smaller(usual, tightest))
        .map(tightening -> set(usual, tightening))
        .filter(Refitter::goesIn)
        .findFirst()
        .map(tighter -> new Refit(tighter, true, growBy, 0))
        .orElseGet(() -> tooLong(set(usual, tightest), growBy));
  }

  /** Smaller type that should fit: by itself, else with everything else tightened too. */
  private Stream<Tightening> smaller(SetBalloon usual, Tightening tightest) {
    Tightening close = new Tightening(1, tightest.leading(), tightest.trackingEm());
    return Stream.of(Tightening.NONE, close)
        .flatMap(
            other -> {
              double size = scale(set(usual, other)) * HAIR;
              return size < tightest.size()
                  ? Stream.empty()
                  : Stream.of(
                      new Tightening(Math.min(1, size), other.leading(), other.trackingEm()));
            });
  }

  private Refit tooLong(SetBalloon tightest, double growBy) {
    int lettersTooMany =
        tightest.given().map(GivenFit::lettersTooMany).orElseGet(() -> lettersBeyond(tightest));
    return lettersTooMany == 0
        ? new Refit(tightest, true, growBy, 0)
        : new Refit(tightest, false, growBy, lettersTooMany);
  }

  /** Letters of an effect beyond the share of it that its room holds. */
  private static int lettersBeyond(SetBalloon effect) {
    double share = 1 - scale(effect);
    return goesIn(effect)
        ? 0
        : Math.max(1, (int) Math.ceil(share * effect.cue().text().characters()));
  }

  private SetBalloon set(SetBalloon balloon, Tightening tightening) {
    return edition
        .typesetter()
        .setAgain(balloon, edition.script(), balloon.wanted().tightened(tightening));
  }

  private static boolean goesIn(SetBalloon balloon) {
    return isUnboxed(balloon)
        ? scale(balloon) >= 1
        : balloon.given().filter(GivenFit::fits).isPresent();
  }

  private static double growBy(SetBalloon balloon) {
    return isUnboxed(balloon)
        ? 1 / scale(balloon)
        : balloon.given().map(GivenFit::growBy).orElse(1.0);
  }

  /** The largest size at which a balloon fits, over the size it is set at. */
  private static double scale(SetBalloon balloon) {
    if (!isUnboxed(balloon)) {
      return balloon.given().map(GivenFit::scale).orElse(1.0);
    }
    Optional<Box> room = balloon.wanted().box();
    double across = room.map(box -> (box.width() + SAME_PX) / balloon.box().width()).orElse(1.0);
    double along = room.map(box -> (box.height() + SAME_PX) / balloon.box().height()).orElse(1.0);
    return Math.min(across, along);
  }

  /**
   * Returns true for an effect without an outline. It may be larger than the one it replaces if it
   * is in no balloon's way; else it takes the room of that one.
   */
  private static boolean isUnboxed(SetBalloon balloon) {
    return balloon.look().shape() == ShapeKind.NONE;
  }
}
