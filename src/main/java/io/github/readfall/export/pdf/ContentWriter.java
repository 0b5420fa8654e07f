package io.github.readfall.export.pdf;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Writes the content of a page (ISO 32000-1, 8 and 9): operands before operators, numbers with as
 * many digits as can be seen.
 */
final class ContentWriter {

  private static final int DIGITS = 3;
  private static final int MATRIX_DIGITS = 7;
  private static final double CHANNEL = 255;

  private final StringBuilder out = new StringBuilder();

  byte[] bytes() {
    return out.toString().getBytes(StandardCharsets.ISO_8859_1);
  }

  /** Writes an operator after its operands. */
  void op(String operator, double... operands) {
    for (double operand : operands) {
      number(operand, DIGITS);
      out.append(' ');
    }
    out.append(operator).append('\n');
  }

  /** Draws what follows through a matrix, until {@link #restore}. */
  void save(double a, double b, double c, double d, double e, double f) {
    out.append("q\n");
    matrix(a, b, c, d, e, f);
    out.append("cm\n");
  }

  void save() {
    out.append("q\n");
  }

  void restore() {
    out.append("Q\n");
  }

  private void matrix(double... values) {
    for (double value : values) {
      number(value, MATRIX_DIGITS);
      out.append(' ');
    }
  }

  /** Starts text at a place, leaning to the right by a length for each unit of height. */
  void textAt(double x, double y, double lean) {
    matrix(1, 0, lean, -1, x, y);
    out.append("Tm\n");
  }

  void fillColour(Colour colour) {
    colour(colour, "rg");
  }

  void lineColour(Colour colour) {
    colour(colour, "RG");
  }

  private void colour(Colour colour, String operator) {
    op(
        operator,
        (colour.rgb() >> 16 & 0xff) / CHANNEL,
        (colour.rgb() >> 8 & 0xff) / CHANNEL,
        (colour.rgb() & 0xff) / CHANNEL);
  }

  /** Lengths of stroke and gap in turn; none for a line without gaps. */
  void dashes(List<Double> lengths) {
    out.append('[');
    for (double length : lengths) {
      number(length, DIGITS);
      out.append(' ');
    }
    out.append("] 0 d\n");
  }

  void box(Box box) {
    op("re", box.x(), box.y(), box.width(), box.height());
  }

  void path(Path path) {
    for (Path.Step step : path.steps()) {
      if (step instanceof Path.Move move) {
        op("m", move.to().x(), move.to().y());
      } else if (step instanceof Path.Line line) {
        op("l", line.to().x(), line.to().y());
      } else if (step instanceof Path.Curve curve) {
        curve(curve.control1(), curve.control2(), curve.to());
      } else {
        op("h");
      }
    }
  }

  private void curve(XY control1, XY control2, XY to) {
    op("c", control1.x(), control1.y(), control2.x(), control2.y(), to.x(), to.y());
  }

  /** Names a resource of the page, for the operator that follows. */
  void name(String name, String operator) {
    out.append('/').append(name).append(' ').append(operator).append('\n');
  }

  void font(String name, double size) {
    out.append('/').append(name).append(' ');
    op("Tf", size);
  }

  /**
   * Shows glyphs, with the distances by which each next one is moved to the left, as in {@link
   * GlyphLine}.
   */
  void show(String glyphs) {
    out.append('[').append(glyphs).append("] TJ\n");
  }

  /** Begins content that belongs to an element of the structure, until {@link #end}. */
  void beginTagged(String type, int id) {
    out.append('/').append(type).append(" <</MCID ").append(id).append(">> BDC\n");
  }

  /** Begins decoration, until {@link #end}. */
  void beginArtifact() {
    out.append("/Artifact BMC\n");
  }

  /** Begins glyphs that say a text, until {@link #end}. */
  void beginSaying(String text) {
    out.append("/Span <</ActualText <FEFF");
    for (byte b : text.getBytes(StandardCharsets.UTF_16BE)) {
      hex(out, b, 2);
    }
    out.append(">>> BDC\n");
  }

  void end() {
    out.append("EMC\n");
  }

  private void number(double value, int digits) {
    number(out, value, digits);
  }

  /** Writes a number without an exponent, which PDF does not know. */
  static void number(StringBuilder out, double value, int digits) {
    long one = (long) StrictMath.pow(10, digits);
    long all = Math.round(value * one);
    if (all < 0) {
      out.append('-');
      all = -all;
    }
    out.append(all / one);
    long rest = all % one;
    if (rest > 0) {
      out.append('.');
      for (long place = one / 10; rest > 0; place /= 10) {
        out.append(rest / place);
        rest %= place;
      }
    }
  }

  /** Writes so many hexadecimal digits. */
  static void hex(StringBuilder out, int value, int digits) {
    for (int i = digits - 1; i >= 0; i--) {
      out.append(Character.toUpperCase(Character.forDigit((value >> (4 * i)) & 0xf, 16)));
    }
  }
}
