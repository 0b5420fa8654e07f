package io.github.readfall.plan.order;

/**
 * How far apart two elements may be before the eye takes another path. All are shares without a
 * unit.
 *
 * <p>That the higher comes first and then the leading side, and that readers leave that path when
 * panels are staggered, set apart, overlapped or blocked by a tall one, is from Cohn 2013,
 * Frontiers in Psychology 4:186, and Cohn and Campbell 2015, Applied Cognitive Psychology
 * 29:193-199. They report directions and shares of readers, and no thresholds: every figure here is
 * a house default, no source.
 */
public final class EyeTolerances {

  /**
   * Two panels are a row if their heights overlap by this share of the smaller one. House default,
   * no source. It puts a stack beside a tall panel before that panel if the stack leads, as 62 to
   * 68 per cent of readers do (Cohn 2013; about 32 per cent read across).
   */
  public static final double ROW = 0.5;

  /** Tops nearer than this, in heights of the smaller, are level. House default, no source. */
  public static final double LEVEL = 0.15;

  /** From this difference on every reader takes the higher first. House default, no source. */
  public static final double CLEARLY_HIGHER = 0.5;

  /**
   * Elements whose widths overlap by this share of the narrower are one below another: neither
   * leads. House default, no source.
   */
  public static final double SAME_COLUMN = 0.5;

  /**
   * Columns are read down if the gap between them is this many times the gaps between the rows.
   * That separation does it: Cohn and Campbell 2015; the figure: house default, no source, high so
   * that gutters of uneven width alone do not do it.
   */
  public static final double COLUMN_GAP = 3;

  /** And if that gap is this share of the narrower column. House default, no source. */
  public static final double COLUMN_GAP_OF_WIDTH = 0.25;

  private EyeTolerances() {}
}
