package io.github.readfall.window.canvas;

import io.github.readfall.base.geom.Box;
import io.github.readfall.plan.EpisodeOverview;
import java.awt.Rectangle;

/**
 * The layout of an episode's overview on a component: the strip on the left, the curve beside it.
 * Lengths are user-interface pixels unless said to be strip pixels.
 *
 * @param strip the box of the whole strip
 * @param acrossPx length of a strip pixel, across; more than {@code downPx} if the strip would be
 *     too thin
 * @param downPx length of a strip pixel, down
 * @param curve the box of the curve, which begins at its left edge
 * @param wordPx length of one word on the curve
 * @param em size of the letters
 * @param widthPx right end of everything
 */
record OverviewFrame(
    Box strip,
    double acrossPx,
    double downPx,
    Box curve,
    double wordPx,
    double em,
    double widthPx) {

  /** Shares of the width and multiples of the size of the letters. House defaults, no source. */
  private static final double MOST_STRIP = 0.38;

  private static final double LEAST_STRIP_EM = 4;
  private static final double AIR_EM = 0.8;
  private static final double LINE_EM = 1.5;
  private static final double GAP_EM = 1.8;
  private static final double NUMBER_EM = 3.8;
  private static final double LIMIT_AT = 0.8;

  /** The largest that fits into a width and height. */
  static OverviewFrame in(int width, int height, double em, EpisodeOverview overview) {
    double top = (AIR_EM + LINE_EM) * em;
    double room = Math.max(1, height - top - (AIR_EM + 2 * LINE_EM) * em);
    Box all = overview.strip();
    double most = Math.max(1, MOST_STRIP * width);
    double down = Math.min(room / all.height(), most / all.width());
    double across = Math.max(all.width() * down, Math.min(most, LEAST_STRIP_EM * em));
    Box strip = new Box(2 * AIR_EM * em, top, across, all.height() * down);
    double left = strip.right() + GAP_EM * em;
    double length = Math.max(1, width - left - (AIR_EM + NUMBER_EM) * em);
    Box curve = new Box(left, top, length, strip.height());
    double right = width - AIR_EM * em;
    return new OverviewFrame(
        strip, across / all.width(), down, curve, wordPx(length, overview), em, right);
  }

  private static double wordPx(double length, EpisodeOverview overview) {
    int fullest = overview.fullest().map(EpisodeOverview.Step::words).orElse(0);
    double most = Math.max(fullest, overview.mostWords() / LIMIT_AT);
    return length / Math.max(1, most);
  }

  /** The y of a height of the strip. */
  double y(double stripPx) {
    return strip.y() + stripPx * downPx;
  }

  /** The height on the strip, in strip pixels, at a y; never outside the strip. */
  double stripPx(double y) {
    return Math.max(0, Math.min(strip.height(), y - strip.y())) / downPx;
  }

  /** The middle of the line below the curve that names the limit. */
  double limitY() {
    return strip.bottom() + LINE_EM * em / 2;
  }

  /** The middle of the line that explains the kinds of lines. */
  double keyY() {
    return limitY() + LINE_EM * em;
  }

  /** The area that the mark of the visible part covers. */
  Rectangle reach(VisiblePart part) {
    int top = (int) Math.floor(y(part.topPx()) - em / 2);
    int bottom = (int) Math.ceil(y(part.bottomPx()) + em / 2);
    return new Rectangle(0, top, (int) Math.ceil(curve.x()), bottom - top);
  }

  /** The box of a part of the strip. */
  Box at(Box stripBox) {
    return new Box(
        strip.x() + stripBox.x() * acrossPx,
        y(stripBox.y()),
        stripBox.width() * acrossPx,
        stripBox.height() * downPx);
  }

  /** The end of a bar of a number of words. */
  double x(double words) {
    return curve.x() + words * wordPx;
  }
}
