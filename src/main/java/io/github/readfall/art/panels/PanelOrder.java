package io.github.readfall.art.panels;

import io.github.readfall.base.geom.Box;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Sorts panels in reading order: rows from the top, in a row from the leading side, a panel before
 * those inside it. By cuts right across and right down in turn (Nagy and Seth 1984, Proceedings of
 * the 7th International Conference on Pattern Recognition).
 */
final class PanelOrder {

  /** Share of the smaller panel by which two may overlap and still follow one another. */
  private static final double OVERLAP = 0.3;

  private final boolean leftToRight;

  private PanelOrder(boolean leftToRight) {
    this.leftToRight = leftToRight;
  }

  /** The panels in their order. */
  static List<FoundPanel> of(List<FoundPanel> panels, boolean leftToRight) {
    List<FoundPanel> frames = new ArrayList<>();
    List<FoundPanel> insets = new ArrayList<>();
    for (FoundPanel panel : panels) {
      (panels.stream().anyMatch(other -> isIn(panel, other)) ? insets : frames).add(panel);
    }
    PanelOrder order = new PanelOrder(leftToRight);
    List<FoundPanel> ordered = new ArrayList<>();
    for (FoundPanel frame : order.byRows(frames)) {
      ordered.add(frame);
      ordered.addAll(order.byRows(insets.stream().filter(inset -> isIn(inset, frame)).toList()));
    }
    insets.stream().filter(inset -> !ordered.contains(inset)).forEach(ordered::add);
    return ordered.stream().distinct().toList();
  }

  /** Returns true if a panel is an inset of another. */
  static boolean isIn(FoundPanel panel, FoundPanel other) {
    Box inner = panel.box();
    return !panel.equals(other)
        && other.box().covers(inner.centre())
        && inner.width() * inner.height() < other.box().width() * other.box().height() / 2;
  }

  private List<FoundPanel> byRows(List<FoundPanel> panels) {
    List<List<FoundPanel>> rows =
        parted(panels, panel -> panel.box().y(), panel -> panel.box().bottom());
    List<FoundPanel> ordered = new ArrayList<>();
    rows.forEach(row -> ordered.addAll(row.size() == 1 ? row : byColumns(row)));
    return ordered;
  }

  private List<FoundPanel> byColumns(List<FoundPanel> row) {
    List<List<FoundPanel>> columns =
        leftToRight
            ? parted(row, panel -> panel.box().x(), panel -> panel.box().right())
            : parted(row, panel -> -panel.box().right(), panel -> -panel.box().x());
    if (columns.size() == 1) {
      return columns.get(0); // interlocked: from the top
    }
    List<FoundPanel> ordered = new ArrayList<>();
    columns.forEach(column -> ordered.addAll(byRows(sortedByTop(column))));
    return ordered;
  }

  private static List<FoundPanel> sortedByTop(List<FoundPanel> panels) {
    return panels.stream().sorted(Comparator.comparingDouble(panel -> panel.box().y())).toList();
  }

  /** Groups that follow one another in one direction without much overlap. */
  private static List<List<FoundPanel>> parted(
      List<FoundPanel> panels, ToDoubleFunction<FoundPanel> from, ToDoubleFunction<FoundPanel> to) {
    List<List<FoundPanel>> groups = new ArrayList<>();
    double end = Double.NEGATIVE_INFINITY;
    double shortest = Double.POSITIVE_INFINITY;
    for (FoundPanel panel : panels.stream().sorted(Comparator.comparingDouble(from)).toList()) {
      double length = to.applyAsDouble(panel) - from.applyAsDouble(panel);
      double overlap = end - from.applyAsDouble(panel);
      if (overlap <= OVERLAP * Math.min(length, shortest)) {
        groups.add(new ArrayList<>());
        shortest = Double.POSITIVE_INFINITY;
        end = Double.NEGATIVE_INFINITY;
      }
      groups.get(groups.size() - 1).add(panel);
      end = Math.max(end, to.applyAsDouble(panel));
      shortest = Math.min(shortest, length);
    }
    return groups;
  }
}
