package io.github.readfall.rules.voice;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.lettering.style.HouseStyle;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Every rule about a series as a whole. Adding one is the same as in {@link RuleBook}. */
public final class SeriesBook {

  private static final List<SeriesRule> ALL =
      List.of( // keep sorted by id
          new DriftedSize(), new StrayedVoice());

  private SeriesBook() {}

  /** Every rule, sorted by id. */
  public static List<SeriesRule> all() {
    return ALL;
  }

  /**
   * Everything that the rules find between the episodes of a series, with the severities of its
   * style: episode by episode, each in script order.
   *
   * @param strips in reading order, all by one house style
   */
  public static List<Finding> check(List<SeriesStrip> strips) {
    if (strips.isEmpty()) {
      return List.of();
    }
    List<String> paths = strips.stream().map(SeriesStrip::path).toList();
    HouseStyle style = strips.get(0).galley().style();
    return found(strips)
        .map(finding -> finding.withSeverity(style.severity(finding.rule(), finding.severity())))
        .sorted(
            Comparator.comparingInt((Finding finding) -> paths.indexOf(finding.where().file()))
                .thenComparingInt(finding -> finding.where().line().orElse(0)))
        .toList();
  }

  private static Stream<Finding> found(List<SeriesStrip> strips) {
    return ALL.stream().flatMap(rule -> rule.check(strips));
  }
}
