package io.github.readfall.type.text;

import io.github.readfall.type.font.GlyphRow;
import io.github.readfall.type.text.LineBreaks.Segment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Measures lines by adding up their segments: for text that runs left to right in faces whose
 * letters keep their shape beside any others.
 *
 * <p>Each run is shaped once. A segment has its own advance, as if it were alone, and a joint to
 * the next: the space between them and the kerning across. A line is its segments and the joints
 * inside it, so kerning with the space and across a hyphen is exact too.
 */
final class SummedLines implements LineTable.Source {

  private final double[] starts;
  private final double[] alone;
  private final Extent[] extents;
  private final double[] balancesPx;

  private SummedLines(double[] starts, double[] alone, Extent[] extents, double[] balancesPx) {
    this.starts = starts;
    this.alone = alone;
    this.extents = extents;
    this.balancesPx = balancesPx;
  }

  static SummedLines of(
      String text, List<ShapedRun> runs, List<Segment> segments, double trackingPx, boolean byEye) {
    return new Shaping(text, segments, trackingPx, byEye).shape(runs);
  }

  @Override
  public List<LineBox> linesFrom(int first, int last, double widestPx) {
    List<LineBox> boxes = new ArrayList<>();
    Extent extent = Extent.NONE;
    for (int end = first; end <= last; end++) {
      double at = starts[end] - starts[first];
      extent = extent.plus(extents[end], at);
      LineBox box = extent.box(at + alone[end]).balanced(balancesPx[end], false);
      if (end > first && box.width() > widestPx) {
        break;
      }
      boxes.add(box);
    }
    return boxes;
  }

  /** One walk over the runs, which fills the row. */
  private static final class Shaping {

    private final String text;
    private final char[] chars;
    private final List<Segment> segments;
    private final double trackingPx;
    private final int[] contentEnds;
    private final int[] signs;
    private final double[] starts;
    private final double[] signsPx;
    private final double[] contentEndsPx;
    private final Extent[] extents;

    Shaping(String text, List<Segment> segments, double trackingPx, boolean byEye) {
      int n = segments.size();
      this.text = text;
      this.chars = text.toCharArray();
      this.segments = segments;
      this.trackingPx = trackingPx;
      this.starts = filled(n + 1);
      this.contentEndsPx = filled(n);
      this.contentEnds = new int[n];
      this.signs = new int[n];
      this.signsPx = filled(n);
      this.extents = new Extent[n];
      Arrays.fill(extents, Extent.NONE);
      for (int s = 0; s < n; s++) {
        Segment segment = segments.get(s);
        contentEnds[s] = LineBreaks.contentEnd(text, segment.start(), segment.end());
        signs[s] = byEye ? EndSigns.start(text, segment.start(), contentEnds[s]) : contentEnds[s];
      }
    }

    private static double[] filled(int size) {
      double[] unknown = new double[size];
      Arrays.fill(unknown, Double.NaN);
      return unknown;
    }

    SummedLines shape(List<ShapedRun> runs) {
      double x = 0;
      for (ShapedRun shaped : runs) {
        x = walk(shaped.run(), shaped.row().orElseThrow(), x);
      }
      starts[segments.size()] = x;
      double[] alone = new double[segments.size()];
      for (int s = segments.size() - 1; s >= 0; s--) {
        starts[s] = Double.isNaN(starts[s]) ? starts[s + 1] : starts[s];
        double end = Double.isNaN(contentEndsPx[s]) ? starts[s + 1] : contentEndsPx[s];
        alone[s] = end - starts[s] - (contentEnds[s] > segments.get(s).start() ? trackingPx : 0);
      }
      runs.forEach(shaped -> standAlone(shaped.run(), alone));
      double[] balances = new double[segments.size()];
      for (int s = 0; s < balances.length; s++) {
        double signsFrom = signsPx[s] - starts[s];
        balances[s] = Double.isNaN(signsFrom) ? 0 : EndSigns.balancePx(alone[s] - signsFrom);
      }
      return new SummedLines(starts, alone, extents, balances);
    }

    /** Places a run's glyphs and gives each to its segment; the pen's place after it. */
    private double walk(Run run, GlyphRow row, double fromPx) {
      double scale = run.type().pxPerUnit();
      int s = segmentAt(run.start(), 0);
      int letters = 0;
      for (int i = 0; i < row.size(); i++) {
        int at = run.start() + row.charIndex(i);
        letters += i > 0 && row.charIndex(i) != row.charIndex(i - 1) ? 1 : 0;
        s = segmentAt(at, s);
        place(run, row, i, s, at, fromPx + row.x(i) * scale + letters * trackingPx);
      }
      noteLetters(run);
      return fromPx + row.advance() * scale + (row.size() > 0 ? letters + 1 : 0) * trackingPx;
    }

    private void place(Run run, GlyphRow row, int i, int s, int at, double x) {
      if (Double.isNaN(starts[s])) {
        starts[s] = x;
      }
      if (at >= signs[s] && at < contentEnds[s] && Double.isNaN(signsPx[s])) {
        signsPx[s] = x;
      }
      if (at < contentEnds[s]) {
        extents[s] = extents[s].plusGlyph(run.type(), row, i, x - starts[s]);
      } else if (Double.isNaN(contentEndsPx[s])) {
        contentEndsPx[s] = x;
      }
    }

    private int segmentAt(int at, int from) {
      int s = from;
      while (at >= segments.get(s).end()) {
        s++;
      }
      while (at < segments.get(s).start()) {
        s--;
      }
      return s;
    }

    private void noteLetters(Run run) {
      for (int s = segmentAt(run.start(), 0);
          s < segments.size() && segments.get(s).start() < run.end();
          s++) {
        int from = Math.max(run.start(), segments.get(s).start());
        int to = Math.min(run.end(), contentEnds[s]);
        extents[s] = extents[s].plusLetters(run.type(), text, from, to);
      }
    }

    /**
     * Shapes again the end of each segment whose last letter is kerned with the next: if no space
     * separates them (letters are kerned across one without width), or if the face kerns its
     * spaces.
     */
    private void standAlone(Run run, double[] alone) {
      for (int s = segmentAt(run.start(), 0);
          s + 1 < segments.size() && segments.get(s).start() < run.end();
          s++) {
        boolean spaced = contentEnds[s] < text.length() && text.charAt(contentEnds[s]) == ' ';
        boolean endsHere = contentEnds[s] > run.start() && contentEnds[s] <= run.end();
        if (endsHere && contentEnds[s] < run.end() && !(spaced && run.type().face().isAdditive())) {
          alone[s] += endKerning(run, s);
        }
      }
    }

    private double endKerning(Run run, int s) {
      int from = Math.max(run.start(), segments.get(s).start());
      int end = contentEnds[s];
      int next = Math.min(run.end(), segments.get(s).end() + 1);
      double before = advance(run, from, end);
      double after = advance(run, end, next);
      double together = advance(run, from, next);
      return before + after - together;
    }

    private double advance(Run run, int from, int to) {
      char[] part = Arrays.copyOfRange(chars, from, to);
      return run.type().face().shape(part, 0, part.length, false).advance()
          * run.type().pxPerUnit();
    }
  }
}
