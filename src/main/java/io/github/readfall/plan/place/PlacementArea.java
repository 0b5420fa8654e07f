package io.github.readfall.plan.place;

import io.github.readfall.base.geom.Box;
import io.github.readfall.plan.Spacing;
import io.github.readfall.strip.KeepClear;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.Mouth;
import io.github.readfall.strip.PanelBox;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The area for the balloons of a panel. Strip pixels.
 *
 * @param panel of the balloons
 * @param leftPx leftmost edge of balloons that stay inside
 * @param rightPx rightmost edge of balloons that stay inside
 * @param outerLeftPx leftmost edge of balloons too wide for that
 * @param outerRightPx rightmost edge of balloons too wide for that
 * @param nextTopPx where the next panel below begins, or the strip ends
 * @param insets panels inside this one, with the room round them
 * @param obstacles what may not be covered, with the insets
 * @param faces areas round mouths that balloons keep out of, but tails may reach
 * @param mouths of this panel
 */
record PlacementArea(
    PanelBox panel,
    double leftPx,
    double rightPx,
    double outerLeftPx,
    double outerRightPx,
    double nextTopPx,
    List<Box> insets,
    List<Box> obstacles,
    List<Box> faces,
    List<Mouth> mouths) {

  /** Half the width of the area kept clear round a mouth, in clearances. House default. */
  private static final double FACE = 1.6;

  /** In clearances: more than the rule about tangents asks for. House default, no source. */
  private static final double TANGENT = 0.6;

  private static final double HAIR = 1e-6;

  PlacementArea {
    insets = List.copyOf(insets);
    obstacles = List.copyOf(obstacles);
    faces = List.copyOf(faces);
    mouths = List.copyOf(mouths);
  }

  static PlacementArea of(PanelBox panel, Layout layout, double safeMarginPx, Spacing spacing) {
    Box box = panel.box();
    double left = Math.max(box.x() + spacing.clearancePx(), safeMarginPx);
    double right = Math.min(box.right() - spacing.clearancePx(), layout.widthPx() - safeMarginPx);
    double outerLeft = safeMarginPx;
    double outerRight = layout.widthPx() - safeMarginPx;
    double next = layout.heightPx();
    List<Box> insets = new ArrayList<>();
    for (PanelBox other : layout.panels()) {
      Box o = other.box();
      if (other.panel() == panel.panel() || o.covers(box)) {
        boolean frame = other.panel() != panel.panel();
        next = frame ? Math.min(next, o.bottom()) : next;
        outerLeft = frame ? Math.max(outerLeft, o.x() + spacing.clearancePx()) : outerLeft;
        outerRight = frame ? Math.min(outerRight, o.right() - spacing.clearancePx()) : outerRight;
      } else if (box.covers(o)) {
        insets.add(o.grownBy(spacing.clearancePx()));
      } else if (o.y() >= box.y() + box.height() / 2
          && o.x() < box.right()
          && o.right() > box.x()) {
        next = Math.min(next, o.y());
      } else if (o.y() < box.bottom() && o.bottom() > box.y()) {
        outerLeft = o.centre().x() < box.centre().x() ? Math.max(outerLeft, left) : outerLeft;
        outerRight = o.centre().x() > box.centre().x() ? Math.min(outerRight, right) : outerRight;
      }
    }
    List<Box> obstacles = new ArrayList<>(insets);
    layout.keepClear().stream()
        .map(KeepClear::box)
        .filter(box::meets)
        .forEach(clear -> obstacles.add(clear.grownBy(spacing.clearancePx() / 2)));
    List<Mouth> mouths =
        layout.mouths().stream().filter(mouth -> mouth.panel() == panel.panel()).toList();
    return new PlacementArea(
        panel,
        left,
        right,
        outerLeft,
        outerRight,
        Math.max(next, box.bottom()),
        insets,
        obstacles,
        mouths.stream().map(mouth -> face(mouth, spacing)).toList(),
        mouths);
  }

  private static Box face(Mouth mouth, Spacing spacing) {
    return new Box(mouth.at().x(), mouth.at().y(), 0, 0).grownBy(FACE * spacing.clearancePx());
  }

  /** The same area with the next panel further down. */
  PlacementArea openedBy(double px) {
    return new PlacementArea(
        panel,
        leftPx,
        rightPx,
        outerLeftPx,
        outerRightPx,
        nextTopPx + px,
        insets,
        obstacles,
        faces,
        mouths);
  }

  /** A speaker's mouth, if it is known. */
  Optional<Mouth> mouth(String speaker) {
    for (Mouth mouth : mouths) { // asked for every place that is tried
      if (mouth.speaker().equalsIgnoreCase(speaker)) {
        return Optional.of(mouth);
      }
    }
    return Optional.empty();
  }

  /**
   * The lowest top of an element that still belongs to this panel: nearer to it than to the next.
   *
   * @param heightPx of the element
   */
  double lowestTopPx(double heightPx, Spacing spacing) {
    double inside = panel.box().bottom() - spacing.clearancePx() - heightPx;
    double crossing = nextTopPx - spacing.clearancePx() - heightPx;
    double nearer = (nextTopPx + panel.box().bottom() - heightPx) / 2 - spacing.clearancePx() / 2;
    return Math.max(inside, Math.min(crossing, nearer));
  }

  /** The highest inset's top; the panel's bottom if there is none. Strip pixels. */
  double firstInsetPx() {
    return insets.stream().mapToDouble(Box::y).min().orElse(panel.box().bottom());
  }

  /** Returns true if an edge is so near one of the panel's that they seem to touch. */
  boolean isTangent(Box box, Spacing spacing) {
    Box own = panel.box();
    double near = tangentPx(spacing) - HAIR;
    return Math.abs(box.bottom() - own.bottom()) < near
        || Math.abs(box.y() - own.y()) < near
        || Math.abs(box.x() - own.x()) < near
        || Math.abs(box.right() - own.right()) < near;
  }

  /** The distance of an edge from a border, on either side of it. */
  static double tangentPx(Spacing spacing) {
    return TANGENT * spacing.clearancePx();
  }
}
