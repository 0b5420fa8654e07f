package io.github.readfall.strip.edits;

import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Changes some of a layout's balloons. */
final class BalloonEdits {

  private BalloonEdits() {}

  static Layout changed(Layout layout, Set<String> ids, UnaryOperator<LaidBalloon> change) {
    return layout.withBalloons(
        layout.balloons().stream()
            .map(balloon -> ids.contains(balloon.id()) ? change.apply(balloon) : balloon)
            .toList());
  }
}
