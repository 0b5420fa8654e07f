package io.github.readfall.window.strip;

import io.github.readfall.base.geom.XY;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.job.StripProof;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.edits.Alignment;
import io.github.readfall.strip.edits.StripEdit;
import io.github.readfall.strip.edits.StripItem;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.strip.gesture.ElementPlaces;
import io.github.readfall.strip.gesture.Gesture;
import io.github.readfall.strip.gesture.Grip;
import io.github.readfall.type.balloon.ShapeKind;
import io.github.readfall.window.canvas.StripPane;
import io.github.readfall.window.model.EpisodeModel;
import io.github.readfall.window.model.EpisodeSnapshot;
import io.github.readfall.window.model.LayoutModel;
import io.github.readfall.window.model.Selection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.BiFunction;

/** The actions on selected elements of the strip, by key or menu. */
public final class StripActions {

  private static final StripEdit NOTHING = new StripEdit.Several(List.of());

  private final EpisodeModel model;
  private final LayoutModel layoutModel;
  private final Selection selection;
  private final StripPane pane;

  public StripActions(
      EpisodeModel model, LayoutModel layoutModel, Selection selection, StripPane pane) {
    this.model = model;
    this.layoutModel = layoutModel;
    this.selection = selection;
    this.pane = pane;
  }

  Selection selection() {
    return selection;
  }

  private Optional<Galley> galley() {
    return model.shown().map(EpisodeSnapshot::galley);
  }

  /** Makes a change that depends on the settled strip. */
  private void edit(String name, String kind, BiFunction<Galley, Layout, StripEdit> change) {
    layoutModel.edit(
        name, kind, layout -> galley().map(galley -> change.apply(galley, layout)).orElse(NOTHING));
  }

  private String name(String key, Set<StripItem> items) {
    return model
        .shown()
        .map(shown -> EditNames.of(key, items, shown.episode().script()))
        .orElse("");
  }

  /** Moves the selected elements, in strip pixels. */
  void move(double dx, double dy) {
    Set<StripItem> items = selection.items();
    if (!items.isEmpty()) {
      StripItem first = items.iterator().next();
      edit(
          name("undo.move", items),
          "move" + items,
          (galley, layout) ->
              new Gesture(new Grip.Body(first), items, galley, new XY(0, 0))
                  .by(dx, dy)
                  .orElse(NOTHING));
    }
  }

  /** Moves the right and lower sides of the selected element, in strip pixels. */
  void size(double dx, double dy) {
    selection
        .single()
        .ifPresent(
            item ->
                edit(
                    name("undo.size", selection.items()),
                    "size" + item,
                    (galley, layout) ->
                        new Gesture(new Grip.Edge(item, 1, 1), Set.of(item), galley, new XY(0, 0))
                            .by(dx, dy)
                            .orElse(NOTHING)));
  }

  /** Sets the outline of the selected balloons; empty leaves it to their voices. */
  void shape(Optional<ShapeKind> shape) {
    ofBalloons("undo.shape", ids -> new StripEdit.Shape(ids, shape));
  }

  /**
   * The settings of the selected balloon, each of another number of lines; none if several are
   * selected, or none is.
   */
  List<SetBalloon> settings() {
    return model
        .proof()
        .flatMap(proof -> chosen(proof.galley()).map(balloon -> settings(balloon.set(), proof)))
        .orElse(List.of());
  }

  private static List<SetBalloon> settings(SetBalloon balloon, StripProof proof) {
    Typesetter typesetter = new Typesetter(proof.episode().shelf(), proof.episode().style());
    return typesetter.settings(balloon, proof.galley().set().script());
  }

  /** The number of lines that the person chose for the selected balloon. */
  OptionalInt chosenLines() {
    return galley()
        .flatMap(this::chosen)
        .map(balloon -> balloon.set().wanted().lines())
        .orElse(OptionalInt.empty());
  }

  private Optional<PlacedBalloon> chosen(Galley galley) {
    Set<String> ids = selection.balloons();
    return ids.size() == 1
        ? new ElementPlaces(galley).balloon(ids.iterator().next())
        : Optional.empty();
  }

  /** Sets the selected balloon in a number of lines; empty has it chosen. */
  void lines(OptionalInt number) {
    List<SetBalloon> settings = settings();
    settings.stream()
        .filter(setting -> number.isEmpty() || setting.lines().size() == number.getAsInt())
        .min(Comparator.comparing(setting -> setting.wanted().lines().isPresent()))
        .ifPresent(
            setting ->
                layoutModel.edit(
                    name("undo.lines", selection.items()),
                    "",
                    new StripEdit.Lines(setting.cue().id(), number, setting.box())));
  }

  /** A change to any balloons. */
  private interface OfBalloons {
    StripEdit of(Set<String> ids);
  }

  private void ofBalloons(String key, OfBalloons change) {
    Set<String> ids = Set.copyOf(selection.balloons());
    if (!ids.isEmpty()) {
      layoutModel.edit(name(key, selection.items()), "", change.of(ids));
    }
  }

  /** Pins the selected balloons; unpins them if all are pinned. */
  void pin() {
    Set<String> ids = Set.copyOf(selection.balloons());
    if (!ids.isEmpty()) {
      edit(
          name("undo.pin", selection.items()),
          "",
          (galley, layout) -> new StripEdit.Pin(ids, !areAllPinned(layout, ids)));
    }
  }

  private static boolean areAllPinned(Layout layout, Set<String> ids) {
    return layout.balloons().stream()
        .filter(balloon -> ids.contains(balloon.id()))
        .allMatch(LaidBalloon::pinned);
  }

  /** Selects the tip of the selected balloon's tail, or the balloon of the selected tip. */
  void aim() {
    selection
        .single()
        .ifPresent(
            item -> {
              if (item instanceof StripItem.Tip tip) {
                selection.select(Set.of(new StripItem.Balloon(tip.balloon())));
              } else if (item instanceof StripItem.Balloon balloon) {
                aim(balloon.id());
              }
            });
  }

  private void aim(String id) {
    if (galley().filter(galley -> !new ElementPlaces(galley).tips(id).isEmpty()).isPresent()) {
      selection.select(Set.of(new StripItem.Tip(id, 0)));
    }
  }

  /** Makes the tails of the selected balloons automatic. */
  void freeTails() {
    ofBalloons(
        "undo.freeTail",
        ids ->
            new StripEdit.Several(
                ids.stream().map(id -> (StripEdit) new StripEdit.FreeTails(id)).toList()));
  }

  /** Aligns the selected balloons. */
  void align(Alignment alignment) {
    Set<String> ids = Set.copyOf(selection.balloons());
    if (ids.size() > 1) {
      String key = alignment == Alignment.SAME_SIZE ? "undo.sameSize" : "undo.align";
      edit(name(key, selection.items()), "", (galley, layout) -> alignment.of(layout, ids));
    }
  }

  /**
   * Opens (positive) or closes the gutter above the panel of the selected element, in strip pixels.
   */
  public void gutter(double byPx) {
    panel()
        .ifPresent(
            panel ->
                layoutModel.edit(
                    Wording.of("undo.gutter", panel),
                    "gutter" + panel,
                    new StripEdit.Gutter(panel, byPx)));
  }

  /** The panel of the selected element. */
  private Optional<Integer> panel() {
    return selection.single().flatMap(this::panel);
  }

  private Optional<Integer> panel(StripItem item) {
    if (item instanceof StripItem.Panel panel) {
      return Optional.of(panel.panel());
    }
    return item instanceof StripItem.Mouth mouth
        ? Optional.of(mouth.panel())
        : selection.balloons().stream()
            .findFirst()
            .flatMap(id -> galley().flatMap(galley -> new ElementPlaces(galley).balloon(id)))
            .map(balloon -> balloon.panel());
  }

  /** Deletes the selected element, if it is not part of the script. */
  void drop() {
    selection
        .single()
        .ifPresent(
            item -> {
              if (item instanceof StripItem.Area area) {
                layoutModel.edit(
                    Wording.of("undo.deleteArea"), "", new StripEdit.DropArea(area.index()));
              } else if (item instanceof StripItem.Mouth mouth) {
                layoutModel.edit(
                    Wording.of("undo.deleteMouth", mouth.speaker()),
                    "",
                    new StripEdit.DropMouth(mouth));
              } else if (item instanceof StripItem.Tip) {
                freeTails();
              }
            });
  }

  /** Selects the next (1) or previous (-1) element of the strip. */
  void step(int by) {
    galley().ifPresent(galley -> step(by, new ElementPlaces(galley)));
  }

  private void step(int by, ElementPlaces places) {
    List<StripItem> all = places.all();
    if (all.isEmpty()) {
      return;
    }
    int now =
        selection.items().stream().mapToInt(all::indexOf).max().orElse(by > 0 ? -1 : all.size());
    int next = Math.max(0, Math.min(all.size() - 1, now + by));
    StripItem item = all.get(next);
    selection.select(Set.of(item));
    places.box(item).ifPresent(pane::reveal);
  }

  /** Selects every balloon. */
  void all() {
    galley()
        .ifPresent(
            galley -> {
              Set<StripItem> items = new LinkedHashSet<>();
              galley.balloons().forEach(balloon -> items.add(new StripItem.Balloon(balloon.id())));
              selection.select(items);
            });
  }
}
