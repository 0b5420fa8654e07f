package io.github.readfall.window.script;

import io.github.readfall.script.LineKind;
import io.github.readfall.script.LinePart;
import io.github.readfall.script.PartKind;
import java.awt.Color;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.LineBreakMeasurer;
import java.awt.font.TextAttribute;
import java.awt.font.TextLayout;
import java.text.AttributedString;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The typography of a script's lines: fonts, distances, and breaking of a line into rows. All
 * lengths are user-space pixels.
 *
 * @param font of text without another look
 * @param colours the colours
 * @param context that the letters are measured for
 */
record ScriptLook(Font font, ScriptColours colours, FontRenderContext context) {

  /** From baseline to baseline, in em. House default, no source. */
  private static final double LEADING_EM = 1.6;

  /** The longest row, in em: about 85 letters. House default, no source. */
  private static final double MEASURE_EM = 44;

  private static final double INDENT_EM = 1.4;
  private static final double ABOVE_PANEL_EM = 1.1;
  private static final double ABOVE_SCENE_EM = 1.8;

  /**
   * The baseline's distance below a row's middle that makes lower-case letters look centred, in em.
   */
  private static final double BASELINE_EM = 0.33;

  private static final double CARET_EM = 1.3;

  int em() {
    return font.getSize();
  }

  int rowHeight() {
    return px(LEADING_EM);
  }

  int baseline() {
    return rowHeight() / 2 + px(BASELINE_EM);
  }

  int caretHeight() {
    return px(CARET_EM);
  }

  int measure() {
    return px(MEASURE_EM);
  }

  /** The space above a line that begins a panel or scene. */
  int above(LineKind kind) {
    return switch (kind) {
      case PANEL -> px(ABOVE_PANEL_EM);
      case SCENE -> px(ABOVE_SCENE_EM);
      default -> 0;
    };
  }

  private int px(double lengthEm) {
    return (int) Math.round(lengthEm * font.getSize2D());
  }

  /**
   * Breaks a line into rows at word ends.
   *
   * @param text of the line, without its end
   * @param width of the rows, at most
   * @return at least one row
   */
  List<TextRow> rows(String text, LineKind kind, List<LinePart> parts, int width) {
    if (text.isEmpty()) {
      return List.of(TextRow.EMPTY);
    }
    int indent = kind == LineKind.CUE ? px(INDENT_EM) : 0;
    LineBreakMeasurer measurer =
        new LineBreakMeasurer(
            attributed(text, parts).getIterator(),
            BreakIterator.getLineInstance(Locale.ROOT),
            context);
    List<TextRow> rows = new ArrayList<>();
    while (measurer.getPosition() < text.length()) {
      int start = measurer.getPosition();
      int left = rows.isEmpty() ? 0 : indent;
      TextLayout layout = measurer.nextLayout(Math.max(em(), width - left));
      float x = layout.isLeftToRight() ? left : width - left - layout.getVisibleAdvance();
      rows.add(new TextRow(start, measurer.getPosition(), x, Optional.of(layout)));
    }
    return rows;
  }

  private AttributedString attributed(String text, List<LinePart> parts) {
    AttributedString line = new AttributedString(visible(text));
    line.addAttribute(TextAttribute.FONT, font);
    line.addAttribute(TextAttribute.FOREGROUND, colours.text());
    for (LinePart part : parts) {
      line.addAttribute(TextAttribute.FONT, font(part.kind()), part.start(), part.end());
      line.addAttribute(TextAttribute.FOREGROUND, ink(part.kind()), part.start(), part.end());
    }
    replaceMissing(text, line);
    return line;
  }

  private Color ink(PartKind kind) {
    return colours.of(kind);
  }

  private Font font(PartKind kind) {
    return switch (kind) {
      case KEYWORD, LABEL, SPEAKER, STRONG -> font.deriveFont(Font.BOLD);
      case NOTE, SLANTED -> font.deriveFont(Font.ITALIC);
      case STRONG_SLANTED -> font.deriveFont(Font.BOLD | Font.ITALIC);
      default -> font;
    };
  }

  /** Sets letters that the font lacks in a font of the system that has them. */
  private void replaceMissing(String text, AttributedString line) {
    int missing = font.canDisplayUpTo(text);
    if (missing < 0) {
      return;
    }
    Font other = new Font(Font.DIALOG, Font.PLAIN, 1).deriveFont(font.getSize2D());
    for (int i = missing; i < text.length(); ) {
      int end = i + Character.charCount(text.codePointAt(i));
      if (!font.canDisplay(text.codePointAt(i))) {
        line.addAttribute(TextAttribute.FONT, other, i, end);
      }
      i = end;
    }
  }

  /** Shows a tab as a wide space. */
  private static String visible(String text) {
    return text.replace('\t', '\u2003');
  }
}
