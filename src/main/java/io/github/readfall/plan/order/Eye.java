package io.github.readfall.plan.order;

import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.style.ReadingSide;

/**
 * The eye of a reader on its way down the strip: says which of two elements is read first. The
 * relation need not be transitive: three balloons that each begin a little higher than the one
 * before form a circle.
 *
 * @param side from which the strip is read
 */
public record Eye(ReadingSide side) {

  /**
   * Compares two balloons of a panel: the clearly higher is read first; of level ones the leading.
   * Worked example: 100 px high, read from the left, tops at 0 and 14: the left one; at 0 and 30:
   * the higher, and readers differ if that is the right one; at 0 and 60: the higher.
   *
   * @param a goes first if nothing decides
   */
  public ReadFirst balloons(Box a, Box b) {
    double offset = offset(a, b);
    boolean aHigher = a.y() < b.y();
    if (offset > EyeTolerances.CLEARLY_HIGHER) {
      return new ReadFirst(aHigher, ReadingReason.HIGHER, offset);
    }
    boolean beside = !shareColumn(a, b);
    if (offset >= EyeTolerances.LEVEL) {
      boolean trailing = beside && leads(a, b) != aHigher;
      return new ReadFirst(
          aHigher,
          trailing ? ReadingReason.HIGHER_BUT_TRAILING : ReadingReason.A_LITTLE_HIGHER,
          offset);
    }
    return beside
        ? new ReadFirst(leads(a, b), ReadingReason.LEADING, offset)
        : new ReadFirst(a.y() <= b.y(), ReadingReason.SAME_COLUMN, offset);
  }

  /**
   * Compares two panels: the leading is read first if they are a row, else the higher.
   *
   * @param a goes first if nothing decides
   */
  public ReadFirst panels(Box a, Box b) {
    double overlap = Math.min(a.bottom(), b.bottom()) - Math.max(a.y(), b.y());
    if (overlap >= EyeTolerances.ROW * Math.min(a.height(), b.height())) {
      return shareColumn(a, b)
          ? new ReadFirst(a.y() <= b.y(), ReadingReason.SAME_COLUMN, offset(a, b))
          : new ReadFirst(leads(a, b), ReadingReason.ROW, offset(a, b));
    }
    boolean staggered = sharedWidth(a, b) <= 0;
    return new ReadFirst(
        a.y() < b.y(), staggered ? ReadingReason.STAGGERED : ReadingReason.HIGHER, offset(a, b));
  }

  /** The difference of tops in heights of the smaller. */
  private static double offset(Box a, Box b) {
    double apart = Math.abs(a.y() - b.y());
    return apart == 0 ? 0 : apart / Math.max(1, Math.min(a.height(), b.height()));
  }

  private boolean leads(Box a, Box b) {
    double toTheRight = b.centre().x() - a.centre().x();
    return side == ReadingSide.LTR ? toTheRight >= 0 : toTheRight <= 0;
  }

  private static boolean shareColumn(Box a, Box b) {
    return sharedWidth(a, b) >= EyeTolerances.SAME_COLUMN * Math.min(a.width(), b.width());
  }

  private static double sharedWidth(Box a, Box b) {
    return Math.min(a.right(), b.right()) - Math.max(a.x(), b.x());
  }
}
