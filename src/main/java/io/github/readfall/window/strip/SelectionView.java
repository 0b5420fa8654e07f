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

  private final EpisodeModel model;
  private final Selection selection;
  private final StripPointerTool pointerTool;
  private final StripPane pane;

  public SelectionView(
      EpisodeModel model, Selection selection, StripPointerTool pointerTool, StripPane pane) {
    this.model = model;
    this.selection = selection;
    this.pointerTool = pointerTool;
    this.pane = pane;
  }

  /** Starts to follow the selection, the pointer tool and the strip. */
  public void listen() {
    selection.onChange(this::show);
    pointerTool.onOutlineChange(this::show);
    model.onSnapshot((shown, picture) -> refresh(shown));
  }

  /** Deselects elements that are gone, and shows the others at their new places. */
  private void refresh(EpisodeSnapshot shown) {
    ElementPlaces places = new ElementPlaces(shown.galley());
    Set<StripItem> left = new LinkedHashSet<>(selection.items());
    left.removeIf(item -> places.box(item).isEmpty());
    selection.select(left);
    show();
  }

  private void show() {
    model.shown().ifPresent(shown -> show(shown, new ElementPlaces(shown.galley())));
  }

  private void show(EpisodeSnapshot shown, ElementPlaces places) {
    pane.showSelection(marks(shown, places));
    OnDemand<List<ElementDescription>> elements =
        new OnDemand<>(() -> new ElementDescriptions(shown, selection.items()).all());
    pane.setElements(elements::get);
  }

  private SelectionMarks marks(EpisodeSnapshot shown, ElementPlaces places) {
    List<Box> frames = new ArrayList<>();
    List<XY> points = new ArrayList<>();
    for (StripItem item : selection.items()) {
      boolean isPoint = item instanceof StripItem.Tip || item instanceof StripItem.Mouth;
      Optional<Box> box = places.box(item);
      box.filter(at -> !isPoint).ifPresent(frames::add);
      box.filter(at -> isPoint).map(Box::centre).ifPresent(points::add);
    }
    selection.balloons().forEach(id -> points.addAll(places.tips(id)));
    List<XY> grips = new ArrayList<>();
    List<XY> bars = new ArrayList<>();
    selection.single().map(item -> Grips.of(shown.galley(), item)).stream()
        .flatMap(List::stream)
        .forEach(grip -> (grip.grip() instanceof Grip.Gutter ? bars : grips).add(grip.at()));
    return new SelectionMarks(frames, grips, bars, points, pointerTool.outline());
  }

  /** A value that is computed on demand. */
  private static final class OnDemand<T> {

    private final Supplier<T> work;
    private Optional<T> done = Optional.empty();

    OnDemand(Supplier<T> work) {
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
