package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Measurement;
import io.github.readfall.rules.legible.LegibleRules;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.rules.order.OrderRules;
import io.github.readfall.rules.space.SpaceRules;
import io.github.readfall.rules.voice.VoiceRules;
import io.github.readfall.rules.words.WordRules;
import io.github.readfall.strip.galley.Galley;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Every rule there is. Adding one is a file, a line here, its page and its fixtures. */
public final class RuleBook {

  private static final List<Rule> ALL =
      Stream.of(
              OrderRules.all(),
              SpaceRules.all(),
              LegibleRules.all(),
              WordRules.all(),
              VoiceRules.all())
          .flatMap(List::stream)
          .sorted(Comparator.comparing(Rule::spec))
          .toList();

  private static final List<Rule> PLACES =
      ALL.stream().filter(rule -> isAboutPlaces(rule.spec().id())).toList();

  private static final List<Rule> OTHERS =
      ALL.stream().filter(rule -> !isAboutPlaces(rule.spec().id())).toList();

  private static final Map<String, Integer> ORDER =
      IntStream.range(0, ALL.size())
          .boxed()
          .collect(Collectors.toUnmodifiableMap(i -> ALL.get(i).spec().id(), i -> i));

  private RuleBook() {}

  /** Returns whether an id is one of the findings about order and room. */
  public static boolean isAboutPlaces(String id) {
    return id.startsWith("flow/") || id.startsWith("space/");
  }

  /** Every rule, sorted by id. */
  public static List<Rule> all() {
    return ALL;
  }

  /** The rule with an id. */
  public static Optional<Rule> rule(String id) {
    return ALL.stream().filter(rule -> rule.spec().id().equals(id)).findFirst();
  }

  /** All findings about a strip, with the severities of its style, in script order. */
  public static List<Finding> check(Galley galley) {
    return check(CheckedStrip.of(galley));
  }

  /** All findings about a strip, with the severities of its style, in script order. */
  public static List<Finding> check(CheckedStrip strip) {
    return check(strip, ALL);
  }

  /** Findings about order and room alone (flow/* and space/*): all that placing can change. */
  public static List<Finding> checkPlaces(CheckedStrip strip) {
    return check(strip, PLACES);
  }

  /**
   * All findings about a strip, as {@link #check} gives them, without running the rules about order
   * and room again.
   *
   * @param places what {@link #checkPlaces} found on the same strip
   */
  public static List<Finding> complete(CheckedStrip strip, List<Finding> places) {
    return Stream.concat(places.stream(), check(strip, OTHERS).stream())
        .sorted(
            Comparator.comparingInt((Finding finding) -> finding.where().line().orElse(0))
                .thenComparingInt(finding -> ORDER.getOrDefault(finding.rule(), 0)))
        .toList();
  }

  private static List<Finding> check(CheckedStrip strip, List<Rule> rules) {
    return rules.stream()
        .flatMap(rule -> rule.check(strip))
        .filter(RuleBook::canBeSeen)
        .map(finding -> graded(finding, strip.galley()))
        .sorted(Comparator.comparingInt(finding -> finding.where().line().orElse(0)))
        .toList();
  }

  /** A limit is one for what people can see, but a ratio of contrast is published as exact. */
  private static boolean canBeSeen(Finding finding) {
    return finding.rule().equals(RuleSpec.CONTRAST.id())
        || finding.measurement().map(Measurement::canBeSeen).orElse(true);
  }

  private static Finding graded(Finding finding, Galley galley) {
    return finding.withSeverity(galley.style().severity(finding.rule(), finding.severity()));
  }
}
