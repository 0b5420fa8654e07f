package io.github.readfall.panels;

import java.util.Arrays;
import java.util.BitSet;

/** Finds where exactly the paper ends at one side of a panel, while the strip's rows go by. */
final class BorderProbe {

  /** Lines are sought so far from where the cells had them. House defaults. */
  private static final int REACH_CELLS = 3;

  private static final int REACH_PX = 4;

  /** The paper is sought so far outside of the line, in cells. */
  private static final int PAPER_CELLS = 4;

  /** What differs from the paper by this share of what lies inside is no paper any more. */
  private static final double CONTRAST = 0.4;

  private static final int MOST_CONTRAST = 60;

  /** The least share of a side that has paper outside of it. */
  private static final double FACES_PAPER = 0.2;

  private static final int NONE = -1;

  /** Hand-drawn lines wobble this much. House default, no source. */
  private static final double SAME_LINE_PX = 2.5;

  /** A line that less of a side lies on is not trusted. */
  private static final double LEAST_SHARE = 0.25;

  private final Border border;
  private final int reach;
  private final boolean endsStrip;
  private final int[] base; // outermost edge that is looked at, by place along
  private final int[] paper; // its colour, or NONE
  private final int[] limit; // what differs more is no paper
  private final int[] met; // how far in the paper ends, or MAX_VALUE

  BorderProbe(Border border, CellGrid grid, BitSet background, Tolerance tolerance) {
    this.border = border;
    this.reach = REACH_CELLS * grid.cellPx() + REACH_PX;
    this.endsStrip =
        border.outermost() < grid.cellPx()
            || border.outermost() > border.side().sizePx(grid) - grid.cellPx();
    this.base = new int[border.length()];
    this.paper = new int[border.length()];
    this.limit = new int[border.length()];
    this.met = new int[border.length()];
    Arrays.fill(met, Integer.MAX_VALUE);
    Cells cells = new Cells(grid, background, border.side());
    for (int i = 0; i < base.length; i++) {
      int line = (int) Math.rint(border.line().at(i));
      int paperCell = cells.paper(border.from() + i, line);
      base[i] = start(line, cells, paperCell);
      paper[i] = paperCell == NONE ? NONE : grid.colour(paperCell);
      int contrast = paper[i] == NONE ? 0 : cells.contrast(border.from() + i, line, paper[i]);
      limit[i] =
          Math.max(
              Math.max(tolerance.colour(), 2 * tolerance.unevenness()),
              (int) (CONTRAST * Math.min(contrast, 2 * MOST_CONTRAST)));
    }
  }

  /** Where to begin: no farther out than the paper goes, nor than the reach. */
  private int start(int line, Cells cells, int paperCell) {
    int inward = border.side().inward();
    int farthest = line - inward * reach;
    if (paperCell == NONE) {
      return farthest;
    }
    int end = cells.endOfPaper(paperCell);
    return inward > 0 ? Math.max(farthest, end) : Math.min(farthest, end);
  }

  /** The grid seen from one side: along it and across. */
  private record Cells(CellGrid grid, BitSet background, Side side) {

    private int cell(int along, int across) {
      int column = side.isLevel() ? along : across;
      int row = side.isLevel() ? across : along;
      boolean inside = column >= 0 && row >= 0 && column < grid.columns() && row < grid.rows();
      return inside ? grid.index(column, row) : NONE;
    }

    /** The first cell of paper going out from a line, or NONE. */
    int paper(int alongPx, int linePx) {
      int along = alongPx / grid.cellPx();
      int across = Math.floorDiv(linePx, grid.cellPx());
      for (int out = 0; out <= PAPER_CELLS; out++) {
        int cell = cell(along, across - side.inward() * out);
        if (isPaper(cell)) {
          return cell;
        }
      }
      return NONE;
    }

    /** Where the paper ends that a cell is part of, going out; in strip pixels. */
    int endOfPaper(int paperCell) {
      int column = paperCell % grid.columns();
      int row = paperCell / grid.columns();
      int along = side.isLevel() ? column : row;
      int across = side.isLevel() ? row : column;
      int out = across;
      while (Math.abs(across - out) <= PAPER_CELLS && isPaper(cell(along, out - side.inward()))) {
        out -= side.inward();
      }
      return (side.inward() > 0 ? out : out + 1) * grid.cellPx();
    }

    private boolean isPaper(int cell) {
      return cell != NONE && background.get(cell);
    }

    int contrast(int alongPx, int linePx, int paper) {
      int along = alongPx / grid.cellPx();
      int across = Math.floorDiv(linePx, grid.cellPx());
      int most = 0;
      for (int in = -1; in <= REACH_CELLS; in++) {
        int cell = cell(along, across + side.inward() * in);
        most = cell == NONE ? most : Math.max(most, Colours.distance(grid.colour(cell), paper));
      }
      return most;
    }
  }

  /** First row of the strip that it needs. */
  int firstRow() {
    return border.side().isLevel()
        ? Arrays.stream(base).min().orElse(0) - 2 * reach
        : border.from();
  }

  /** The row after the last that it needs. */
  int endRow() {
    return border.side().isLevel() ? Arrays.stream(base).max().orElse(0) + 2 * reach : border.end();
  }

  /** Whether there is paper outside of enough of it; else somebody cut it off there. */
  private boolean facesPaper() {
    return Arrays.stream(paper).filter(colour -> colour != NONE).count()
        >= FACES_PAPER * paper.length;
  }

  /** Looks at a row of the strip. */
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

  /** The side with the line through where the paper ends; as it was where that is not clear. */
  Border refined() {
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
      return endsStrip ? border : border.on(new Edge(border.line().at(), border.line().slope(), 0));
    }
    Edge fit = EdgeFit.of(places, SAME_LINE_PX);
    if (fit.share() < LEAST_SHARE) {
      return border;
    }
    return border.on(new Edge(inward * (fit.at() + outermost), inward * fit.slope(), fit.share()));
  }
}
