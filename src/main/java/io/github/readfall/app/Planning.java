package io.github.readfall.app;

import io.github.readfall.canvas.StripPane;
import io.github.readfall.canvas.StripScene;
import io.github.readfall.desk.Desk;
import io.github.readfall.desk.Shown;
import java.util.Optional;

/** Keeps the page of the plan at what the desk has worked out and the strip shows. */
final class Planning {

  private final Desk<StripScene> desk;
  private final PlanView view;
  private Optional<PlanShown> shown = Optional.empty();
  private boolean isCounted;

  /** Shows plans from now on. */
  Planning(Desk<StripScene> desk, PlanView view, StripPane strip) {
    this.desk = desk;
    this.view = view;
    desk.onShown(
        (next, picture) -> {
          if (next.isSettled()) {
            show(next);
          }
        });
    view.onCounted(this::counted);
    view.onAsked(strip::showFrom);
    strip.onVisible(view::see);
  }

  private void counted() {
    isCounted = true;
    desk.shown().filter(Shown::isSettled).ifPresent(this::show);
  }

  private void show(Shown next) {
    if (!isCounted) {
      view.setCount(PlanShown.proposed(next));
    }
    PlanShown plan = PlanShown.of(next, view.count());
    shown = Optional.of(plan);
    view.show(plan);
  }

  /** Another episode is opened, or none. */
  void clear() {
    isCounted = false;
    shown = Optional.empty();
    view.clear();
  }

  /** The plan that is shown, of the words as they are now; else empty. */
  Optional<PlanShown> upToDate() {
    return desk.isSettled() ? shown : Optional.empty();
  }
}
