package io.github.readfall.base.geom;

/** Outlines in the notation of SVG 1.1, "Path data", to a hundredth of a pixel. */
public final class SvgPath {

  private SvgPath() {}

  /** The path data of an outline: {@code M … Z}, absolute. */
  public static String of(Path path) {
    StringBuilder out = new StringBuilder();
    for (Path.Step step : path.steps()) {
      out.append(out.isEmpty() ? "" : " ");
      append(step, out);
    }
    return out.toString();
  }

  private static void append(Path.Step step, StringBuilder out) {
    if (step instanceof Path.Move move) {
      point("M ", move.to(), out);
    } else if (step instanceof Path.Line line) {
      point("L ", line.to(), out);
    } else if (step instanceof Path.Curve curve) {
      point("C ", curve.control1(), out);
      point(" ", curve.control2(), out);
      point(" ", curve.to(), out);
    } else {
      out.append('Z');
    }
  }

  private static void point(String before, XY at, StringBuilder out) {
    out.append(before).append(number(at.x())).append(' ').append(number(at.y()));
  }

  /** A number with at most two decimals and no exponent. */
  public static String number(double value) {
    long hundredths = Math.round(value * 100);
    if (hundredths % 100 == 0) {
      return Long.toString(hundredths / 100);
    }
    long size = Math.abs(hundredths);
    String decimals = size % 10 == 0 ? "" + size % 100 / 10 : "" + size % 100 / 10 + size % 10;
    return (hundredths < 0 ? "-" : "") + size / 100 + "." + decimals;
  }
}
