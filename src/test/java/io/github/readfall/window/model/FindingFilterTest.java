package io.github.readfall.window.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import io.github.readfall.base.geom.Box;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class FindingFilterTest {

  private static final Finding LOW =
      finding("words/long", Severity.WARNING, "Too many words.").at(new Box(0, 900, 10, 10));
  private static final Finding HIGH =
      finding("space/overlap", Severity.ERROR, "They overlap.").at(new Box(0, 100, 10, 10));
  private static final Finding NOWHERE = finding("style/key", Severity.NOTE, "Unknown key.");
  private static final List<Finding> ALL = List.of(LOW, HIGH, NOWHERE);

  private static Finding finding(String rule, Severity severity, String message) {
    return Finding.of(rule, severity, Where.everywhere(), message, "Mend it.");
  }

  @Test
  void findingsAreInTheOrderOfTheStripThoseWithoutAPlaceFirst() {
    assertEquals(List.of(NOWHERE, HIGH, LOW), FindingFilter.ALL.of(ALL));
  }

  @Test
  void onlyTheChosenSeveritiesAreShown() {
    FindingFilter errors = new FindingFilter(Set.of(Severity.ERROR), "");
    assertEquals(List.of(HIGH), errors.of(ALL));
  }

  @Test
  void wordsAreSearchedInRuleAndMessageInAnyCase() {
    FindingFilter rule = new FindingFilter(FindingFilter.ALL.severities(), "SPACE/");
    FindingFilter sentence = new FindingFilter(FindingFilter.ALL.severities(), " many words ");
    assertEquals(List.of(HIGH), rule.of(ALL));
    assertEquals(List.of(LOW), sentence.of(ALL));
  }

  @Test
  void allAreCountedWhateverTheFilter() {
    assertEquals(1, FindingFilter.count(ALL, Severity.WARNING));
  }
}
