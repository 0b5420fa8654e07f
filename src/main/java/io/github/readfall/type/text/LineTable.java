package io.github.readfall.type.text;

import io.github.readfall.type.text.LineBreaks.Segment;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Every line that could be set from a row of segments, by its first and last one: numbers only, so
 * that fitting knows neither letters nor faces.
 *
 * <p>Lines too wide to be of use are left out, so the table grows with the text, not with its
 * square.
 */
public final class LineTable {

  /** Measures lines. */
  interface Source {
    /**
     * The boxes of the lines that start with a segment, each one segment longer than the one
     * before: the first always, then up to the last that is wanted and no wider than asked.
     */
    List<LineBox> linesFrom(int first, int last, double widestPx);
  }

  private final LineBox[][] lines;
  private final boolean[] forced;
  private final BreakCosts costs;

  private LineTable(LineBox[][] lines, boolean[] forced, BreakCosts costs) {
    this.lines = lines;
    this.forced = forced;
    this.costs = costs;
  }

  static LineTable of(Source source, List<Segment> segments, BreakCosts costs, double widestPx) {
    int n = segments.size();
    LineBox[][] lines = new LineBox[n][];
    boolean[] forced = new boolean[n];
    int stop = n - 1;
    for (int i = n - 1; i >= 0; i--) {
      forced[i] = segments.get(i).forced();
      stop = forced[i] ? i : stop;
      lines[i] = source.linesFrom(i, stop, widestPx).toArray(LineBox[]::new);
    }
    return new LineTable(lines, forced, costs);
  }

  /** The lines of the first so many segments alone. */
  public LineTable firstSegments(int segments) {
    LineBox[][] some = new LineBox[segments][];
    for (int first = 0; first < segments; first++) {
      some[first] = Arrays.copyOf(lines[first], Math.min(lines[first].length, segments - first));
    }
    return new LineTable(some, forced, costs.first(segments));
  }

  /** The number of segments. */
  public int size() {
    return lines.length;
  }

  /** The last segment that a line starting here may end with. */
  public int lastOf(int first) {
    return first + lines[first].length - 1;
  }

  /** The box of a line; {@code last} not beyond {@link #lastOf}. */
  public LineBox box(int first, int last) {
    return lines[first][last - first];
  }

  /** The segments that alone are wider than this. */
  public List<Integer> widerThan(double widestPx) {
    return IntStream.range(0, lines.length)
        .filter(s -> box(s, s).width() > widestPx)
        .boxed()
        .toList();
  }

  /** Width of the widest line that could be set. */
  public double widestPx() {
    return IntStream.range(0, lines.length)
        .mapToDouble(first -> box(first, lastOf(first)).width())
        .max()
        .orElse(0);
  }

  /** Returns true if a line must end after this segment. */
  public boolean isForced(int segment) {
    return forced[segment];
  }

  /** What breaks cost. */
  public BreakCosts costs() {
    return costs;
  }
}
