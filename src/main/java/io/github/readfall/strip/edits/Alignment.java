package io.github.readfall.strip.edits;

import io.github.readfall.base.geom.Box;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Ways to align balloons, by the first of them in the script. */
public enum Alignment {
  LEFT,
  CENTRE,
  RIGHT,
  TOP,
  MIDDLE,
  BOTTOM,
  /** As wide and as tall as the largest, each about its own middle. */
  SAME_SIZE;

  /**
   * The edit that aligns them.
   *
   * @param balloons ids of their cues
   */
  public StripEdit of(Layout layout, Set<String> balloons) {
    List<LaidBalloon> meant =
        layout.balloons().stream()
            .filter(balloon -> balloons.contains(balloon.id()) && balloon.box().isPresent())
            .toList();
    List<StripEdit> edits = new ArrayList<>();
    Optional<Box> model = model(meant);
    for (LaidBalloon balloon : meant) {
      Box box = balloon.box().orElseThrow();
      Box goal = by(model.orElse(box), box);
      if (!goal.equals(box)) {
        edits.add(
            this == SAME_SIZE
                ? new StripEdit.Size(balloon.id(), goal)
                : new StripEdit.Move(Set.of(balloon.id()), goal.x() - box.x(), goal.y() - box.y()));
      }
    }
    return new StripEdit.Several(edits);
  }

  private Optional<Box> model(List<LaidBalloon> balloons) {
    if (this != SAME_SIZE) {
      return balloons.stream().flatMap(balloon -> balloon.box().stream()).findFirst();
    }
    return balloons.stream()
        .flatMap(balloon -> balloon.box().stream())
        .reduce(
            (a, b) ->
                new Box(0, 0, Math.max(a.width(), b.width()), Math.max(a.height(), b.height())));
  }

  private Box by(Box model, Box box) {
    return switch (this) {
      case LEFT -> at(box, model.x(), box.y());
      case CENTRE -> at(box, model.centre().x() - box.width() / 2, box.y());
      case RIGHT -> at(box, model.right() - box.width(), box.y());
      case TOP -> at(box, box.x(), model.y());
      case MIDDLE -> at(box, box.x(), model.centre().y() - box.height() / 2);
      case BOTTOM -> at(box, box.x(), model.bottom() - box.height());
      case SAME_SIZE ->
          new Box(
              box.centre().x() - model.width() / 2,
              box.centre().y() - model.height() / 2,
              model.width(),
              model.height());
    };
  }

  private static Box at(Box box, double x, double y) {
    return new Box(x, y, box.width(), box.height());
  }
}
