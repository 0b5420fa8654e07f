package io.github.readfall.window.canvas;

import static io.github.readfall.window.canvas.OverviewPen.CLEAR;
import static io.github.readfall.window.canvas.OverviewPen.FAINT;
import static io.github.readfall.window.canvas.OverviewPen.FINE;
import static io.github.readfall.window.canvas.OverviewPen.THICK;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.plan.EpisodeOverview;
import java.awt.BasicStroke;
import java.awt.geom.Ellipse2D;

/**
 * Paints the whole strip, small. The end of a canvas page is dashed right across, that of a slice
 * is a tick on either side.
 */
record OverviewStrip(OverviewPen pen, OverviewFrame frame, EpisodeOverview overview) {

  private static final double LEAST_MARK = 2;
  private static final double LEAST_FRAMED = 4;
  private static final int PAPER = 14;

  /** Paints panels, balloons and cuts. */
  void paint() {
    pen.fill(frame.strip(), OverviewPen.clear(pen.colours().text(), PAPER));
    for (Box panel : overview.panels()) {
      Box box = frame.at(panel);
      pen.fill(box, OverviewPen.clear(pen.colours().text(), FAINT));
      if (box.height() > LEAST_FRAMED) {
        pen.frame(box, OverviewPen.clear(pen.colours().text(), CLEAR), FINE);
      }
    }
    overview.balloons().forEach(this::balloon);
    pen.frame(frame.strip(), pen.colours().edge(), FINE);
    double left = frame.strip().x();
    double right = frame.strip().right();
    overview.cuts().slices().forEach(cut -> slice(left, right, frame.y(cut)));
    overview.cuts().pages().forEach(cut -> page(left, right, frame.y(cut)));
    key();
  }

  private void balloon(Box stripBox) {
    Box box = frame.at(stripBox);
    double width = Math.max(LEAST_MARK, box.width());
    double height = Math.max(LEAST_MARK, box.height() - 1);
    pen.g().setColor(pen.colours().text());
    pen.g().fill(new Ellipse2D.Double(box.x(), box.y(), width, height));
  }

  private void page(double left, double right, double y) {
    double tick = pen.tickPx();
    BasicStroke dashes = OverviewPen.dashed(tick / 2, tick / 3);
    pen.across(left - 2 * tick, right + 2 * tick, y, dashes);
  }

  private void slice(double left, double right, double y) {
    double tick = pen.tickPx();
    pen.across(left - tick, left, y, OverviewPen.whole(FINE));
    pen.across(right, right + tick, y, OverviewPen.whole(FINE));
  }

  /** Explains the kinds of lines, below the strip. */
  private void key() {
    double tick = pen.tickPx();
    Box piece = new Box(frame.strip().x(), frame.keyY() - tick, 2 * tick, 2 * tick);
    page(piece.x(), piece.right(), frame.keyY());
    double end = named("overview.page", piece);
    Box other = new Box(end + 3 * tick, piece.y(), piece.width(), piece.height());
    slice(other.x(), other.right(), frame.keyY());
    named("overview.slice", other);
  }

  /**
   * Names the line that crosses a sample piece of the strip.
   *
   * @return the right end of the words
   */
  private double named(String key, Box piece) {
    String words = Wording.of(key);
    pen.frame(piece, pen.colours().edge(), FINE);
    double left = piece.right() + 3 * pen.tickPx();
    pen.write(words, left, frame.keyY());
    return left + pen.widthPx(words);
  }

  /** Paints a frame around the visible part. */
  void view(VisiblePart part) {
    double top = frame.y(part.topPx());
    double height = Math.max(THICK, frame.y(part.bottomPx()) - top);
    double tick = pen.tickPx();
    double width = frame.strip().width() + 2 * tick;
    Box box = new Box(frame.strip().x() - tick, top, width, height);
    pen.fill(box, OverviewPen.clear(pen.colours().mark(), FAINT));
    pen.frame(box, pen.colours().mark(), THICK);
  }
}
