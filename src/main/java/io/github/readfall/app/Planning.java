package io.github.readfall.app;

import io.github.readfall.canvas.StripPane;
import io.github.readfall.canvas.StripScene;
import io.github.readfall.desk.Desk;
import io.github.readfall.desk.Shown;
import java.util.Optional;
import java.util.concurrent.Executor;
import javax.swing.SwingUtilities;

/** Keeps the page of the plan at what the desk has worked out and the strip shows. */
final class Planning {

  private final Desk<StripScene> desk;
  private final PlanView view;
  private final Executor thorough;
  private Optional<PlanShown> shown = Optional.empty();
  private boolean isCounted;
  private long version;

  /**
   * Shows plans from now on.
   *
   * @param thorough works splits out
   */
  Planning(Desk<StripScene> desk, PlanView view, StripPane strip, Executor thorough) {
    this.desk = desk;
    this.view = view;
    this.thorough = thorough;
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
    long now = ++version;
    int count = view.count();
    thorough.execute(
        () -> {
          PlanShown plan = PlanShown.of(next, count);
          SwingUtilities.invokeLater(() -> show(plan, now));
        });
  }

  private void show(PlanShown plan, long of) {
    if (of == version) {
      shown = Optional.of(plan);
      view.show(plan);
    }
  }

  /** Another episode is opened, or none. */
  void clear() {
    version++;
    isCounted = false;
    shown = Optional.empty();
    view.clear();
  }

  /** The plan that is shown, of the words and the number of parts as they are now; else empty. */
  Optional<PlanShown> upToDate() {
    return shown.filter(plan -> desk.isSettled() && plan.count() == view.count() && isNow(plan));
  }

  private boolean isNow(PlanShown plan) {
    return desk.shown().filter(now -> now.plan().equals(plan.plan())).isPresent();
  }
}
