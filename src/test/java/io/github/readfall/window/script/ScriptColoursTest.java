package io.github.readfall.window.script;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLightLaf;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.script.PartKind;
import java.awt.Color;
import java.util.stream.Stream;
import javax.swing.LookAndFeel;
import javax.swing.UIManager;
import javax.swing.UnsupportedLookAndFeelException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every letter is legible: WCAG 2.2, success criterion 1.4.3, contrast of at least 4.5 to 1. */
class ScriptColoursTest {

  private static final double LEAST = 4.5;

  static Stream<LookAndFeel> themes() {
    return Stream.of(new FlatLightLaf(), new FlatDarkLaf());
  }

  @ParameterizedTest
  @MethodSource("themes")
  void contrastWithTheirBackground(LookAndFeel theme) throws UnsupportedLookAndFeelException {
    LookAndFeel before = UIManager.getLookAndFeel();
    UIManager.setLookAndFeel(theme);
    ScriptColours colours = ScriptColours.ofTheme();
    UIManager.setLookAndFeel(before);
    for (Color ground :
        new Color[] {
          colours.ground(),
          colours.caretLine(),
          colours.flash(),
          colours.match(),
          colours.selection()
        }) {
      assertReadable("text", colours.text(), ground);
    }
    for (Color ground : new Color[] {colours.ground(), colours.caretLine()}) {
      for (PartKind kind : PartKind.values()) {
        assertReadable(kind.name(), colours.of(kind), ground);
      }
      for (Severity severity : Severity.values()) {
        assertReadable(severity.name(), colours.of(severity), ground);
      }
    }
  }

  private static void assertReadable(String what, Color ink, Color ground) {
    double contrast = contrast(ink, ground);
    assertTrue(contrast >= LEAST, () -> what + " " + ink + " on " + ground + " " + contrast);
  }

  private static double contrast(Color a, Color b) {
    double lighter = Math.max(luminance(a), luminance(b));
    double darker = Math.min(luminance(a), luminance(b));
    return (lighter + 0.05) / (darker + 0.05);
  }

  /** Relative luminance as WCAG 2.2 defines it. */
  private static double luminance(Color c) {
    return 0.2126 * linear(c.getRed())
        + 0.7152 * linear(c.getGreen())
        + 0.0722 * linear(c.getBlue());
  }

  private static double linear(int channel) {
    double s = channel / 255.0;
    return s <= 0.04045 ? s / 12.92 : StrictMath.pow((s + 0.055) / 1.055, 2.4);
  }
}
