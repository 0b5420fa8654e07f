package io.github.readfall.rules.order;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.base.finding.Where;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.plan.order.Displaced;
import io.github.readfall.plan.order.ReadingOrder;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.script.Cue;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A balloon that is read in another order than the script has it. One finding for each balloon of
 * the smallest set that has to move, not for each pair.
 */
final class InvertedBalloons implements Rule {

  /** Most other balloons that a finding names. House default, no source. */
  private static final int MOST_NAMED = 12;

  @Override
  public RuleSpec spec() {
    return RuleSpec.INVERTED;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    ReadingOrder order = strip.order();
    List<Displaced> displaced = order.displaced();
    Set<Integer> moving = new HashSet<>();
    displaced.forEach(balloon -> moving.add(balloon.index()));
    Map<Integer, Box> settled = new HashMap<>();
    List<Finding> findings = new ArrayList<>();
    for (Displaced balloon : displaced) {
      moving.remove(balloon.index());
      PlacedBalloon placed = galley.balloons().get(balloon.index());
      Optional<XY> place = PlaceInPanel.of(balloon.index(), galley, order, settled, moving);
      place.ifPresent(
          to ->
              settled.put(
                  balloon.index(),
                  placed.box().movedBy(to.x() - placed.box().x(), to.y() - placed.box().y())));
      findings.add(finding(balloon, place, order, galley));
    }
    return findings.stream();
  }

  private Finding finding(
      Displaced displaced, Optional<XY> place, ReadingOrder order, Galley galley) {
    PlacedBalloon balloon = galley.balloons().get(displaced.index());
    Finding finding =
        Finding.of(
                RuleSpec.INVERTED.id(),
                RuleSpec.INVERTED.severity(),
                where(displaced, galley),
                message(displaced, order, galley),
                advice(displaced, place, galley))
            .measured(displaced.others().size(), 0, RuleSpec.INVERTED.unit())
            .at(box(displaced, galley));
    return place.map(to -> finding.withFix(new Fix.Move(balloon.id(), to))).orElse(finding);
  }

  private static Where where(Displaced displaced, Galley galley) {
    Cue cue = galley.balloons().get(displaced.index()).cue();
    List<String> ids =
        concerned(displaced).sorted().map(balloon -> galley.balloons().get(balloon).id()).toList();
    return Where.balloons(ids, cue.panel(), cue.line());
  }

  private static Stream<Integer> concerned(Displaced displaced) {
    return Stream.concat(
        Stream.of(displaced.index()), displaced.others().stream().limit(MOST_NAMED));
  }

  private static Box box(Displaced displaced, Galley galley) {
    return concerned(displaced)
        .map(balloon -> galley.balloons().get(balloon).box())
        .reduce(Box::union)
        .orElseThrow();
  }

  private static Phrase message(Displaced displaced, ReadingOrder order, Galley galley) {
    int other = displaced.others().get(0);
    PlacedBalloon earlier = galley.balloons().get(Math.min(displaced.index(), other));
    PlacedBalloon later = galley.balloons().get(Math.max(displaced.index(), other));
    Phrase reason =
        order.reason(
            Math.min(displaced.index(), other),
            Math.max(displaced.index(), other),
            Phrase.of("").balloon(earlier.id()),
            Phrase.of("").balloon(later.id()));
    int more = displaced.others().size() - 1;
    Phrase rest =
        more == 0
            ? Phrase.of("")
            : Phrase.of("; " + more + " more out of order with ")
                .balloon(id(displaced.index(), galley));
    return Phrase.of("The eye meets " + BalloonFinding.name(later.set()))
        .then(" before " + BalloonFinding.name(earlier.set()))
        .then(", which comes first in the script: ")
        .then(reason)
        .then(rest)
        .then(".");
  }

  private static Phrase advice(Displaced displaced, Optional<XY> place, Galley galley) {
    String id = id(displaced.index(), galley);
    if (place.isPresent()) {
      return new Fix.Move(id, place.get()).sentence();
    }
    List<Integer> others = displaced.others();
    boolean up = others.get(0) > displaced.index();
    String next = id(up ? others.get(0) : others.get(others.size() - 1), galley);
    String unpin = galley.balloons().get(displaced.index()).pinned() ? ", which you pinned," : "";
    return Phrase.of("Move ")
        .balloon(id)
        .then(unpin + (up ? " so that it begins above " : " so that it begins below "))
        .balloon(next)
        .then(", or change their order in the script.");
  }

  private static String id(int balloon, Galley galley) {
    return galley.balloons().get(balloon).id();
  }
}
