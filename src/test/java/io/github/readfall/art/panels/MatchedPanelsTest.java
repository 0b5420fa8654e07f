package io.github.readfall.art.panels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import io.github.readfall.script.Panel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MatchedPanelsTest {

  private static final double STRIP = 800;

  private final List<ExpectedPanel> wanted = new ArrayList<>();
  private final List<FoundPanel> found = new ArrayList<>();
  private double y;

  private void panel(String heading, double balloonsPx2, double widestPx) {
    int number = wanted.size() + 1;
    Panel panel =
        new Panel(number, "", heading, List.of(), List.of(), 10 * number, Optional.empty());
    wanted.add(new ExpectedPanel(panel, balloonsPx2, widestPx, Optional.empty()));
  }

  private void panels(String... headings) {
    for (String heading : headings) {
      panel(heading, 0, 0);
    }
  }

  private void box(double width, double height, double certainty) {
    found.add(new FoundPanel(new Box(20, y, width, height), certainty, ""));
    y += height + 40;
  }

  private MatchedPanels matched() {
    return MatchedPanels.of(wanted, found, STRIP, true);
  }

  /** For each box from the top the panel it is, 0 for none. */
  private List<Integer> numbers() {
    MatchedPanels matched = matched();
    return found.stream()
        .map(
            box ->
                matched.panels().stream()
                    .filter(panel -> panel.found().equals(box))
                    .map(MatchedPanel::number)
                    .findFirst()
                    .orElse(0))
        .toList();
  }

  @Test
  void asManyBoxesAsPanelsGoTogetherInTheirOrder() {
    panels("tall", "", "wide", "");
    box(760, 200, 0.9);
    box(760, 900, 0.9);
    box(760, 200, 0.5);
    box(760, 300, 0.9);
    assertEquals(List.of(1, 2, 3, 4), numbers());
    assertEquals(List.of(), MatchFindings.of(matched()));
  }

  @Test
  void theBoxThatIsLeastCertainIsLeftOver() {
    panels("", "", "");
    box(760, 300, 0.95);
    box(300, 120, 0.4);
    box(760, 300, 0.95);
    box(760, 300, 0.95);
    assertEquals(List.of(1, 0, 2, 3), numbers());
    Finding finding = MatchFindings.of(matched()).get(0);
    assertEquals("art/panel-extra", finding.rule());
    assertEquals(Optional.of(found.get(1).box()), finding.box());
  }

  @Test
  void theTallBoxIsThePanelThatIsToBeTall() {
    panels("", "", "tall", "");
    box(760, 300, 0.9);
    box(760, 300, 0.9);
    box(700, 1100, 0.9);
    assertEquals(3, numbers().get(2));
    found.remove(0);
    assertEquals(3, numbers().get(1));
  }

  @Test
  void aBoxWithoutRoomForTheWordsIsNotTheirPanel() {
    panel("", 0, 0);
    panel("", 200_000, 600);
    panel("", 0, 0);
    box(300, 250, 0.9);
    box(760, 500, 0.9);
    assertEquals(2, numbers().get(1));
    assertEquals(1, matched().missing().size());
  }

  @Test
  void anInsetIsThePanelThatIsToBeOne() {
    panels("", "", "inset", "");
    found.add(new FoundPanel(new Box(0, 0, 760, 800), 0.9, ""));
    found.add(new FoundPanel(new Box(40, 500, 200, 150), 0.9, ""));
    found.add(new FoundPanel(new Box(0, 900, 760, 400), 0.9, ""));
    assertEquals(List.of(3, 4), numbers().subList(1, 3));
  }

  @Test
  void aPanelThatIsMissingIsNamedWithItsPlace() {
    panels("", "tall", "");
    box(760, 200, 0.9);
    box(760, 200, 0.9);
    MatchedPanels matched = matched();
    assertEquals(List.of(2), matched.missing().stream().map(Panel::number).toList());
    Finding finding = MatchFindings.of(matched).get(0);
    assertEquals("art/panel-missing", finding.rule());
    assertEquals(2, finding.where().panel().orElseThrow());
    assertEquals(20, finding.where().line().orElseThrow());
    assertTrue(finding.message().contains("below 0 px and above 440 px"), finding.message());
  }

  @Test
  void withoutPanelsInTheScriptEveryBoxIsExtra() {
    box(760, 200, 0.9);
    assertEquals(1, matched().extra().size());
    found.clear();
    panels("", "");
    assertEquals(2, matched().missing().size());
  }
}
