package io.github.readfall.window.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import io.github.readfall.base.geom.Box;
import io.github.readfall.series.autosave.ThemeChoice;
import io.github.readfall.window.model.FindingFilter;
import io.github.readfall.window.parts.Theme;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JPanel;
import org.junit.jupiter.api.Test;

class FindingsViewTest {

  private static final Finding LONG = finding("words/long", Severity.WARNING, "Too many words.");
  private static final Finding OVER = finding("space/overlap", Severity.ERROR, "They overlap.");

  private static final Phrase.Balloons NONE =
      new Phrase.Balloons() {
        @Override
        public String name(String id) {
          return "a balloon";
        }

        @Override
        public Optional<Box> box(String id) {
          return Optional.empty();
        }
      };

  private final FindingsView view;
  private final List<Finding> chosen = new ArrayList<>();

  FindingsViewTest() {
    Theme.prepare();
    new Theme(ThemeChoice.LIGHT, 0).apply();
    view = new FindingsView(new JPanel());
    view.onChosen(chosen::add);
    view.show(List.of(LONG, OVER), NONE);
  }

  private static Finding finding(String rule, Severity severity, String message) {
    return Finding.of(rule, severity, Where.everywhere(), message, "Mend it.");
  }

  private List<Finding> listed() {
    List<Finding> listed = new ArrayList<>();
    for (int i = 0; i < view.shownList().getModel().getSize(); i++) {
      listed.add(view.shownList().getModel().getElementAt(i));
    }
    return listed;
  }

  @Test
  void findingsThatMatchTheFilterAreListed() {
    assertEquals(List.of(LONG, OVER), listed());
    view.setFilter(new FindingFilter(Set.of(Severity.ERROR), ""));
    assertEquals(List.of(OVER), listed());
    view.setFilter(new FindingFilter(FindingFilter.ALL.severities(), "many words"));
    assertEquals(List.of(LONG), listed());
    assertEquals("many words", view.filter().words());
  }

  @Test
  void stepsWrapAroundTheList() {
    view.step(1);
    view.step(1);
    view.step(1);
    view.step(-1);
    assertEquals(List.of(LONG, OVER, LONG, OVER), chosen);
  }

  @Test
  void theSelectedFindingStaysSelectedWhileItIsFound() {
    view.step(-1);
    view.show(List.of(OVER), NONE);
    assertEquals(OVER, view.shownList().getSelectedValue());
    assertEquals(List.of(OVER), chosen);
  }
}
