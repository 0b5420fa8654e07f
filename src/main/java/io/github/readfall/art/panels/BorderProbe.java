package io.github.readfall.art.panels;

import java.util.Arrays;
import java.util.OptionalInt;

/** Finds the exact end of the paper at one side of a panel while the strip's rows pass. */
final class BorderProbe {

  /** Distance from the cells' border within which lines are searched. House defaults. */
  private static final int REACH_CELLS = 3;

  private static final int REACH_PX = 4;

  /** Difference from the paper, as a share of the inside's, from which a pixel is not paper. */
  private static final double CONTRAST = 0.4;

  private static final int MOST_CONTRAST = 120;

  /** Least share of a side that has paper outside it. */
  private static final double FACES_PAPER = 0.2;

  private static final int NONE = -1;

  /** Wobble of hand-drawn lines. House default, no source. */
  private static final double SAME_LINE_PX = 2.5;

  /** Least share of a side on a line for the line to be trusted. */
  private static final double LEAST_SHARE = 0.25;

  private final BorderLine border;
  private final PaperView view;
  private final int reach;
  private final int[] base; // outermost edge examined, by place along
  private final int[] paper; // its colour, or NONE
  private final int[] limit; // greatest difference that is still paper
  private final int[] met; // depth at which the paper ends, or MAX_VALUE
  private final int firstRow;
  private final int endRow;

  BorderProbe(BorderLine border, PaperView view, Tolerance tolerance) {
    this.border = border;
    this.view = view;
    this.reach = REACH_CELLS * view.cellPx() + REACH_PX;
    this.base = new int[border.length()];
    this.paper = new int[border.length()];
    this.limit = new int[border.length()];
    this.met = new int[border.length()];
    Arrays.fill(met, Integer.MAX_VALUE);
    int least = Math.max(tolerance.colour(), 2 * tolerance.unevenness());
    for (int i = 0; i < base.length; i++) {
      prepare(i, least);
    }
    boolean level = border.side().isLevel();
    this.firstRow = level ? Arrays.stream(base).min().orElse(0) - 2 * reach : border.from();
    this.endRow = level ? Arrays.stream(base).max().orElse(0) + 2 * reach : border.end();
  }

  private void prepare(int i, int leastLimit) {
    int along = border.from() + i;
    int line = (int) Math.rint(border.line().at(i));
    OptionalInt cell = view.paper(along, line);
    base[i] = line - border.side().inward() * reach;
    paper[i] = NONE;
    limit[i] = leastLimit;
    if (cell.isPresent()) {
      base[i] = start(base[i], view.endOfPaper(cell.getAsInt()));
      paper[i] = view.colour(cell.getAsInt());
      int contrast = Math.min(view.contrast(along, line, paper[i]), MOST_CONTRAST);
      limit[i] = Math.max(leastLimit, (int) (CONTRAST * contrast));
    }
  }

  /** The place to start at: no farther out than the paper goes, nor than the reach. */
  private int start(int reached, int endOfPaper) {
    return border.side().inward() > 0
        ? Math.max(reached, endOfPaper)
        : Math.min(reached, endOfPaper);
  }

  /** The first row of the strip that it needs. */
  int firstRow() {
    return firstRow;
  }

  /** The row after the last that it needs. */
  int endRow() {
    return endRow;
  }

  /** Returns true if enough of it has paper outside; otherwise the art was cut there. */
  private boolean facesPaper() {
    return Arrays.stream(paper).filter(colour -> colour != NONE).count()
        >= FACES_PAPER * paper.length;
  }

  /** Examines a row of the strip. */
  void row(int y, byte[] rgb) {
    if (!border.side().isLevel()) {
      look(y - border.from(), rgb);
      return;
    }
    for (int i = 0; i < base.length; i++) {
      int in = border.side().inward() > 0 ? y - base[i] : base[i] - 1 - y;
      if (in >= 0 && in < Math.min(met[i], 2 * reach) && isOther(i, rgb, border.from() + i)) {
        met[i] = in;
      }
    }
  }

  private void look(int i, byte[] rgb) {
    for (int in = 0; in < 2 * reach; in++) {
      int x = border.side().inward() > 0 ? base[i] + in : base[i] - 1 - in;
      if (x >= 0 && 3 * x < rgb.length && isOther(i, rgb, x)) {
        met[i] = in;
        return;
      }
    }
  }

  private boolean isOther(int i, byte[] rgb, int x) {
    return paper[i] != NONE && Colours.distance(Colours.at(rgb, x), paper[i]) > limit[i];
  }

  /** The side with the line on which the paper ends; unchanged if that is not clear. */
  BorderLine refined() {
    int inward = border.side().inward();
    int outermost = Integer.MAX_VALUE;
    for (int place : base) {
      outermost = Math.min(outermost, inward * place);
    }
    int[] places = new int[met.length];
    for (int i = 0; i < met.length; i++) {
      boolean found = met[i] != Integer.MAX_VALUE;
      places[i] = found ? inward * base[i] - outermost + met[i] : EdgeFit.NOWHERE;
    }
    if (!facesPaper()) {
      return view.isAtEnd(border.outermost())
          ? border
          : border.on(new Edge(border.line().at(), border.line().slope(), 0));
    }
    Edge fit = EdgeFit.of(places, SAME_LINE_PX);
    if (fit.share() < LEAST_SHARE) {
      return border;
    }
    return border.on(new Edge(inward * (fit.at() + outermost), inward * fit.slope(), fit.share()));
  }
}
