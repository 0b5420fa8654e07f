package io.github.readfall.window;

import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.viewing.Colour;
import io.github.readfall.series.autosave.ThemeChoice;
import io.github.readfall.window.parts.Theme;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import javax.swing.LookAndFeel;
import javax.swing.UIManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Every text in the window is readable, and every line with a meaning visible: WCAG 2.2, success
 * criteria 1.4.3 and 1.4.11, level AA.
 */
class ThemeContrastTest {

  private static final double LEAST = 4.5;
  private static final double LEAST_OF_LINES = 3;

  /** Colours of underlines, in which no text is written. */
  private static final List<String> LINES =
      List.of("Readfall.script.error", "Readfall.script.warning", "Readfall.script.remark");

  /** Colours of backgrounds and lines, in which no text is written. */
  private static final List<String> NO_INK =
      List.of(
          "Readfall.line",
          "Readfall.notice",
          "Readfall.canvas.background",
          "Readfall.canvas.edge",
          "Readfall.canvas.ground",
          "Readfall.script.background",
          "Readfall.script.caretLine",
          "Readfall.script.flash",
          "Readfall.script.hairline",
          "Readfall.script.match",
          "Readfall.script.selection");

  private LookAndFeel before = UIManager.getLookAndFeel();

  @BeforeEach
  void rememberTheTheme() {
    before = UIManager.getLookAndFeel();
  }

  @AfterEach
  void restoreTheTheme() throws Exception {
    UIManager.setLookAndFeel(before);
  }

  @ParameterizedTest
  @EnumSource(names = {"LIGHT", "DARK"})
  void everyInkStandsOutFromItsGrounds(ThemeChoice choice) {
    Theme.prepare();
    new Theme(choice, 0).apply();
    List<String> faint = new ArrayList<>();
    for (String ink : inks()) {
      for (String ground : grounds(ink)) {
        double contrast = colour(ink).contrastWith(colour(ground));
        if (contrast < (LINES.contains(ink) ? LEAST_OF_LINES : LEAST)) {
          faint.add(ink + " on " + ground + ": " + contrast);
        }
      }
    }
    assertTrue(faint.isEmpty(), choice + ": " + faint);
  }

  private static List<String> inks() {
    TreeSet<String> inks = new TreeSet<>();
    for (Object key : UIManager.getLookAndFeelDefaults().keySet()) {
      if (key instanceof String name && name.startsWith("Readfall.") && !NO_INK.contains(name)) {
        inks.add(name);
      }
    }
    assertTrue(inks.size() > 15, "only these inks were found: " + inks);
    inks.addAll(
        List.of("Label.foreground", "Button.foreground", "List.foreground", "MenuItem.foreground"));
    return List.copyOf(inks);
  }

  /** The backgrounds on which a text colour is used. */
  private static List<String> grounds(String ink) {
    if (ink.startsWith("Readfall.script.")) {
      return List.of(
          "Readfall.script.background",
          "Readfall.script.caretLine",
          "Readfall.script.flash",
          "Readfall.script.match",
          "Readfall.script.selection");
    }
    if (ink.startsWith("Readfall.canvas.")) {
      return List.of("Readfall.canvas.background");
    }
    return switch (ink) {
      case "Label.foreground" -> List.of("Panel.background", "Readfall.notice");
      case "Button.foreground" -> List.of("Button.background");
      case "MenuItem.foreground" -> List.of("PopupMenu.background", "MenuBar.background");
      default -> List.of("Panel.background", "List.background");
    };
  }

  private static Colour colour(String key) {
    Color color = UIManager.getColor(key);
    assertTrue(color != null, () -> "there is no colour " + key);
    return new Colour(color.getRGB() & 0xffffff);
  }
}
