package io.github.readfall.flow;

import io.github.readfall.geom.Box;
import io.github.readfall.style.ReadingSide;

/**
 * A reader's eye on its way down the strip: of two things, which it meets first. The relation need
 * not be transitive: three balloons that each begin a little higher than the one before them go in
 * a circle.
 *
 * @param side from which the strip is read
 */
public record Eye(ReadingSide side) {

  /**
   * Of two balloons of a panel, the clearly higher; of level ones the leading. Worked example: 100
   * px high, read from the left, tops at 0 and 14: the left one; at 0 and 30: the higher, and
   * readers differ if that is the right one; at 0 and 60: the higher.
   *
   * @param a goes first where nothing decides
   */
  public Meeting balloons(Box a, Box b) {
    double offset = offset(a, b);
    boolean aHigher = a.y() < b.y();
    if (offset > Habits.CLEARLY_HIGHER) {
      return new Meeting(aHigher, Why.HIGHER, offset);
    }
    boolean beside = !shareColumn(a, b);
    if (offset >= Habits.LEVEL) {
      boolean trailing = beside && leads(a, b) != aHigher;
      return new Meeting(aHigher, trailing ? Why.HIGHER_BUT_TRAILING : Why.A_LITTLE_HIGHER, offset);
    }
    return beside
        ? new Meeting(leads(a, b), Why.LEADING, offset)
        : new Meeting(a.y() <= b.y(), Why.SAME_COLUMN, offset);
  }

  /**
   * Of two panels, the leading where they are a row, else the higher.
   *
   * @param a goes first where nothing decides
   */
  public Meeting panels(Box a, Box b) {
    double overlap = Math.min(a.bottom(), b.bottom()) - Math.max(a.y(), b.y());
    if (overlap >= Habits.ROW * Math.min(a.height(), b.height())) {
      return shareColumn(a, b)
          ? new Meeting(a.y() <= b.y(), Why.SAME_COLUMN, offset(a, b))
          : new Meeting(leads(a, b), Why.ROW, offset(a, b));
    }
    boolean staggered = sharedWidth(a, b) <= 0;
    return new Meeting(a.y() < b.y(), staggered ? Why.STAGGERED : Why.HIGHER, offset(a, b));
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
    return sharedWidth(a, b) >= Habits.SAME_COLUMN * Math.min(a.width(), b.width());
  }

  private static double sharedWidth(Box a, Box b) {
    return Math.min(a.right(), b.right()) - Math.max(a.x(), b.x());
  }
}
