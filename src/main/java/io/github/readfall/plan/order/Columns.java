package io.github.readfall.plan.order;

import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.style.ReadingSide;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * A stretch of the strip that no panel above or below reaches into, and the columns that are read
 * down in it, if it has any.
 *
 * @param panels their boxes, from the top; at least one
 * @param gaps between columns, from left to right; empty if panels are read row by row
 * @param ratio of the narrowest of those gaps to the widest between rows; 0 without columns
 */
record Columns(List<Box> panels, List<Gap> gaps, double ratio) {

  /** Room between two columns, in strip pixels. */
  record Gap(double left, double right) {
    double width() {
      return right - left;
    }
  }

  /** A stretch that no level line divides without cutting a panel. */
  static Columns band(List<Box> panels) {
    return new Columns(List.copyOf(panels), List.of(), 0);
  }

  double top() {
    return panels.get(0).y();
  }

  double bottom() {
    return most(Box::bottom);
  }

  private double most(ToDoubleFunction<Box> edge) {
    return panels.stream().mapToDouble(edge).max().orElseThrow();
  }

  /** The column of a box, from 0 on the leading side. */
  int columnOf(Box box, ReadingSide side) {
    double middle = box.centre().x();
    int fromTheLeft = 0;
    for (Gap gap : gaps) { // asked of every two panels
      fromTheLeft += gap.left() < middle ? 1 : 0;
    }
    return side == ReadingSide.LTR ? fromTheLeft : gaps.size() - fromTheLeft;
  }

  /** This and the stretch below as one, if they are parts of columns that are far apart. */
  Optional<Columns> joinedWith(Columns below) {
    List<Box> both = new ArrayList<>(panels);
    both.addAll(below.panels);
    double rowGap = Math.max(1, below.top() - bottom());
    double least = EyeTolerances.COLUMN_GAP * rowGap;
    List<Gap> wide =
        gapsOf(both).stream()
            .filter(gap -> gap.width() >= least && gap.width() >= narrowerBeside(gap, both))
            .filter(gap -> gaps.isEmpty() || gaps.stream().anyMatch(mine -> meet(mine, gap)))
            .toList();
    boolean twoDown = parts(panels, wide) && parts(below.panels, wide);
    if (wide.isEmpty() || !twoDown) {
      return Optional.empty();
    }
    double narrowest = wide.stream().mapToDouble(Gap::width).min().orElseThrow();
    double widest = gaps.isEmpty() ? narrowest / rowGap : Math.min(ratio, narrowest / rowGap);
    return Optional.of(new Columns(List.copyOf(both), wide, widest));
  }

  private static boolean meet(Gap a, Gap b) {
    return a.left() < b.right() && b.left() < a.right();
  }

  /** Returns true if there are panels on both sides of every gap. */
  private static boolean parts(List<Box> panels, List<Gap> gaps) {
    return gaps.stream()
        .allMatch(
            gap ->
                panels.stream().anyMatch(box -> box.right() <= gap.left())
                    && panels.stream().anyMatch(box -> box.x() >= gap.right()));
  }

  private static double narrowerBeside(Gap gap, List<Box> panels) {
    double left =
        panels.stream()
            .filter(box -> box.right() <= gap.left())
            .mapToDouble(Box::width)
            .max()
            .orElseThrow();
    double right =
        panels.stream()
            .filter(box -> box.x() >= gap.right())
            .mapToDouble(Box::width)
            .max()
            .orElseThrow();
    return EyeTolerances.COLUMN_GAP_OF_WIDTH * Math.min(left, right);
  }

  /** The widths that no panel covers from top to bottom, without the strip's edges. */
  private static List<Gap> gapsOf(List<Box> panels) {
    List<Gap> gaps = new ArrayList<>();
    List<Box> fromTheLeft = panels.stream().sorted(Comparator.comparingDouble(Box::x)).toList();
    double covered = fromTheLeft.get(0).right();
    for (Box box : fromTheLeft) {
      if (box.x() > covered) {
        gaps.add(new Gap(covered, box.x()));
      }
      covered = Math.max(covered, box.right());
    }
    return gaps;
  }
}
