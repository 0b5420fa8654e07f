package io.github.readfall.app;

import io.github.readfall.canvas.Held;
import io.github.readfall.canvas.StripPane;
import io.github.readfall.canvas.StripScene;
import io.github.readfall.canvas.Thing;
import io.github.readfall.desk.Chosen;
import io.github.readfall.desk.Desk;
import io.github.readfall.desk.Shown;
import io.github.readfall.edits.Item;
import io.github.readfall.geom.Box;
import io.github.readfall.geom.XY;
import io.github.readfall.gesture.Grip;
import io.github.readfall.gesture.Grips;
import io.github.readfall.gesture.Places;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** Shows what is chosen on the strip, and says what there is for those who do not see it. */
final class StripChoice {

  private final Desk<StripScene> desk;
  private final Chosen chosen;
  private final StripHands hands;
  private final StripPane pane;

  StripChoice(Desk<StripScene> desk, Chosen chosen, StripHands hands, StripPane pane) {
    this.desk = desk;
    this.chosen = chosen;
    this.hands = hands;
    this.pane = pane;
    chosen.onChange(this::show);
    hands.onBand(this::show);
    desk.onShown((shown, picture) -> refresh(shown));
  }

  /** Forgets what is not there any more, and shows the rest where it is now. */
  private void refresh(Shown shown) {
    Places places = new Places(shown.galley());
    Set<Item> left = new LinkedHashSet<>(chosen.items());
    left.removeIf(item -> places.box(item).isEmpty());
    chosen.choose(left);
    show();
  }

  private void show() {
    desk.shown().ifPresent(shown -> show(shown, new Places(shown.galley())));
  }

  private void show(Shown shown, Places places) {
    pane.hold(held(shown, places));
    Once<List<Thing>> things = new Once<>(() -> new StripThings(shown, chosen.items()).all());
    pane.things(things::get);
  }

  private Held held(Shown shown, Places places) {
    List<Box> frames = new ArrayList<>();
    List<XY> points = new ArrayList<>();
    for (Item item : chosen.items()) {
      boolean isPoint = item instanceof Item.Tip || item instanceof Item.Mouth;
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
    return new Held(frames, grips, bars, points, hands.band());
  }

  /** Something that is worked out when it is first asked for. */
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
