package io.github.readfall.art.panels;

/**
 * The difference within which paper is still the same paper, in grey levels.
 *
 * @param unevenness of one cell
 * @param colour between a cell and the paper beside it
 */
record Tolerance(int unevenness, int colour) {

  // House defaults, found on generated strips: more than JPEG leaves of a flat colour, less than a
  // thin grey line.
  private static final int LEAST_UNEVENNESS = 10;
  private static final int MOST_UNEVENNESS = 30; // if there is no paper at all
  private static final int COLOUR = 18;

  /** Share of all cells that are taken to be as even as the paper's grain lets them be. */
  private static final double PAPER = 0.1;

  private static final double GRAINS = 1.8;

  /** The tolerance for a strip whose paper may have a grain. */
  static Tolerance of(CellGrid grid) {
    int grain = grid.unevennessOf(PAPER);
    int wanted = (int) Math.max(LEAST_UNEVENNESS, Math.ceil(GRAINS * grain));
    return new Tolerance(Math.min(wanted, MOST_UNEVENNESS), COLOUR);
  }
}
