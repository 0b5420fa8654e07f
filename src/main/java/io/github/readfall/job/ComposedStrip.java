package io.github.readfall.job;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.plan.place.Shortfall;
import io.github.readfall.rules.RuleBook;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.galley.Galley;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A strip put together.
 *
 * @param galley every balloon in its place
 * @param layout of the galley, as it is written to disk
 * @param shortfalls panels without enough room, from top to bottom
 * @param judgement of the galley, once it has been judged
 */
record ComposedStrip(
    Galley galley, Layout layout, List<Shortfall> shortfalls, Optional<Judgement> judgement) {

  /** Any error weighs more than all warnings. */
  private static final long ERROR_WEIGHT = 1_000_000;

  /**
   * The findings about order and room, which are all that placing can change.
   *
   * @param strip what all rules share
   * @param findings those of flow/* and space/*
   */
  record Judgement(CheckedStrip strip, List<Finding> findings) {
    Judgement {
      findings = List.copyOf(findings);
    }

    /** All findings about the galley; the rules about order and room do not run again. */
    List<Finding> withAllRules() {
      return RuleBook.complete(strip, findings);
    }
  }

  ComposedStrip {
    shortfalls = List.copyOf(shortfalls);
  }

  ComposedStrip(Galley galley, Layout layout, List<Shortfall> shortfalls) {
    this(galley, layout, shortfalls, Optional.empty());
  }

  /** The same strip with other panels that lack room. */
  ComposedStrip lacking(List<Shortfall> others) {
    return new ComposedStrip(galley, layout, others, judgement);
  }

  /** The same strip, judged; one that is judged already is not judged again. */
  ComposedStrip judged() {
    return judgement.isPresent()
        ? this
        : new ComposedStrip(galley, layout, shortfalls, Optional.of(judge()));
  }

  private Judgement judge() {
    CheckedStrip strip = CheckedStrip.of(galley);
    return new Judgement(strip, RuleBook.checkPlaces(strip));
  }

  /** All findings about its galley, in script order. */
  List<Finding> findings() {
    return judgement.orElseGet(this::judge).withAllRules();
  }

  private Stream<Finding> faults() {
    return judgement.orElseGet(this::judge).findings().stream()
        .filter(finding -> finding.severity() != Severity.NOTE);
  }

  /** The ids of balloons with a fault of order or room, notes aside. */
  Set<String> faultyBalloons() {
    return faults()
        .flatMap(finding -> finding.where().balloons().stream())
        .collect(Collectors.toSet());
  }

  /** Returns true if its faults of order and room weigh less than another's. */
  boolean isBetterThan(ComposedStrip other) {
    return weight() < other.weight();
  }

  private long weight() {
    return faults()
        .mapToLong(finding -> finding.severity() == Severity.ERROR ? ERROR_WEIGHT : 1)
        .sum();
  }
}
