package io.github.readfall.window.plan;

import io.github.readfall.window.canvas.StripPane;
import io.github.readfall.window.model.EpisodeModel;
import io.github.readfall.window.model.EpisodeSnapshot;
import java.util.Optional;
import java.util.concurrent.Executor;
import javax.swing.SwingUtilities;

/** Keeps the plan page up to date with the model and the strip. */
public final class PlanController {

  private final EpisodeModel model;
  private final PlanView view;
  private final Executor thorough;
  private Optional<PlanContent> shown = Optional.empty();
  private boolean isCounted;
  private long version;

  /**
   * A controller that shows plans from now on.
   *
   * @param thorough computes splits
   */
  public PlanController(EpisodeModel model, PlanView view, StripPane strip, Executor thorough) {
    this.model = model;
    this.view = view;
    this.thorough = thorough;
    model.onSnapshot(
        (next, picture) -> {
          if (next.isSettled()) {
            show(next);
          }
        });
    view.onCounted(this::counted);
    view.onScrollRequest(strip::showFrom);
    strip.onScroll(view::see);
  }

  private void counted() {
    isCounted = true;
    model.shown().filter(EpisodeSnapshot::isSettled).ifPresent(this::show);
  }

  private void show(EpisodeSnapshot next) {
    if (!isCounted) {
      view.setCount(PlanContent.proposed(next));
    }
    long now = ++version;
    int count = view.count();
    thorough.execute(
        () -> {
          PlanContent plan = PlanContent.of(next, count);
          SwingUtilities.invokeLater(() -> show(plan, now));
        });
  }

  private void show(PlanContent plan, long of) {
    if (of == version) {
      shown = Optional.of(plan);
      view.show(plan);
    }
  }

  /** Clears the page: another episode is opened, or none. */
  public void clear() {
    version++;
    isCounted = false;
    shown = Optional.empty();
    view.clear();
  }

  /** The plan that is shown, if it belongs to the current text and number of parts; else empty. */
  public Optional<PlanContent> upToDate() {
    return shown.filter(plan -> model.isSettled() && plan.count() == view.count() && isNow(plan));
  }

  private boolean isNow(PlanContent plan) {
    return model.shown().filter(now -> now.plan().equals(plan.plan())).isPresent();
  }
}
