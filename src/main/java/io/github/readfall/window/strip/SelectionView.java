package io.github.readfall.window.strip;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.strip.edits.StripItem;
import io.github.readfall.strip.gesture.ElementPlaces;
import io.github.readfall.strip.gesture.Grip;
import io.github.readfall.strip.gesture.Grips;
import io.github.readfall.window.canvas.ElementDescription;
import io.github.readfall.window.canvas.SelectionMarks;
import io.github.readfall.window.canvas.StripPane;
import io.github.readfall.window.model.EpisodeModel;
import io.github.readfall.window.model.EpisodeSnapshot;
import io.github.readfall.window.model.Selection;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** Shows the selection on the strip, and describes the strip's elements to assistive tools. */
public final class SelectionView {

  private final EpisodeModel desk;
  private final Selection chosen;
  private final StripPointerTool hands;
  private final StripPane pane;

  public SelectionView(
      EpisodeModel desk, Selection chosen, StripPointerTool hands, StripPane pane) {
    this.desk = desk;
    this.chosen = chosen;
    this.hands = hands;
    this.pane = pane;
  }

  /** Starts to follow the selection, the pointer tool and the strip. */
  public void listen() {
    chosen.onChange(this::show);
    hands.onOutlineChange(this::show);
    desk.onSnapshot((shown, picture) -> refresh(shown));
  }

  /** Deselects elements that are gone, and shows the others at their new places. */
  private void refresh(EpisodeSnapshot shown) {
    ElementPlaces places = new ElementPlaces(shown.galley());
    Set<StripItem> left = new LinkedHashSet<>(chosen.items());
    left.removeIf(item -> places.box(item).isEmpty());
    chosen.select(left);
    show();
  }

  private void show() {
    desk.shown().ifPresent(shown -> show(shown, new ElementPlaces(shown.galley())));
  }

  private void show(EpisodeSnapshot shown, ElementPlaces places) {
    pane.showSelection(held(shown, places));
    Once<List<ElementDescription>> elements =
        new Once<>(() -> new ElementDescriptions(shown, chosen.items()).all());
    pane.setElements(elements::get);
  }

  private SelectionMarks held(EpisodeSnapshot shown, ElementPlaces places) {
    List<Box> frames = new ArrayList<>();
    List<XY> points = new ArrayList<>();
    for (StripItem item : chosen.items()) {
      boolean isPoint = item instanceof StripItem.Tip || item instanceof StripItem.Mouth;
      Optional<Box> box = places.box(item);
      box.filter(at -> !isPoint).ifPresent(frames::add);
      box.filter(at -> isPoint).map(Box::centre).ifPresent(points::add);
    }
    chosen.balloons().forEach(id -> places.tip(id).ifPresent(points::add));
    List<XY> grips = new ArrayList<>();
    List<XY> bars = new ArrayList<>();
    chosen.single().map(item -> Grips.of(shown.galley(), item)).stream()
        .flatMap(List::stream)
        .forEach(grip -> (grip.grip() instanceof Grip.Gutter ? bars : grips).add(grip.at()));
    return new SelectionMarks(frames, grips, bars, points, hands.outline());
  }

  /** A value that is computed on demand. */
  private static final class Once<T> {

    private final Supplier<T> work;
    private Optional<T> done = Optional.empty();

    Once(Supplier<T> work) {
      this.work = work;
    }

    T get() {
      if (done.isEmpty()) {
        done = Optional.of(work.get());
      }
      return done.get();
    }
  }
}
