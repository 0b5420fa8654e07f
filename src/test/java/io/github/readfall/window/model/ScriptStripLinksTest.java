package io.github.readfall.window.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScriptStripLinksTest {

  private static final String SCRIPT =
      """
      Title: Ebb
      PANEL 1
      The mill.

      ILSE: It turns
      again.
      WOUTER: Leave it be.

      PANEL 2
      Water.
      """;

  private final ScriptStripLinks links = TestModels.with(SCRIPT).shown().orElseThrow().links();

  @ParameterizedTest
  @CsvSource({"5,p1-1", "6,p1-1", "7,p1-2"})
  void aLineOfACueMeansItsBalloon(int line, String id) {
    assertEquals(Optional.of(balloon(id)), links.placeOf(line));
  }

  @ParameterizedTest
  @CsvSource({"2,1", "3,1", "8,1", "9,2", "10,2"})
  void anyOtherLineMeansItsPanel(int line, int panel) {
    assertEquals(
        links.galley().panel(panel).map(p -> p.box()), links.placeOf(line), "line " + line);
  }

  @Test
  void aHeaderHasNoPlaceOnTheStrip() {
    assertEquals(Optional.empty(), links.placeOf(1));
  }

  @Test
  void whatIsPointedAtOnTheStripIsFoundInTheScript() {
    assertEquals(OptionalInt.of(5), links.lineAt(balloon("p1-1").centre()));
    Box second = links.galley().panel(2).orElseThrow().box();
    assertEquals(OptionalInt.of(9), links.lineAt(second.centre()));
    assertEquals(OptionalInt.empty(), links.lineAt(new XY(-50, -50)));
  }

  @Test
  void aFindingAboutBalloonsIsRoundThemAll() {
    Finding finding = about(List.of("p1-1", "p1-2"));
    Box both = balloon("p1-1").union(balloon("p1-2"));
    assertEquals(Optional.of(both), links.placeOf(finding));
    assertEquals(OptionalInt.of(5), links.lineOf(finding));
  }

  private static Finding about(List<String> balloons) {
    Where where =
        new Where("", OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty(), balloons);
    return Finding.of("space/overlap", Severity.ERROR, where, "They overlap.", "");
  }

  @Test
  void aFindingInTheHouseStyleIsNotInTheScript() {
    Finding finding =
        Finding.of("style/key", Severity.WARNING, Where.at("series.toml", 3, 1), "No.", "");
    assertEquals(OptionalInt.empty(), links.lineOf(finding));
    assertTrue(links.placeOf(finding).isEmpty());
  }

  private Box balloon(String id) {
    return links.galley().balloons().stream()
        .filter(balloon -> balloon.id().equals(id))
        .findFirst()
        .orElseThrow()
        .box();
  }
}
