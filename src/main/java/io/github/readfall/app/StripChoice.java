package io.github.readfall.app;

import io.github.readfall.canvas.Held;
import io.github.readfall.canvas.StripPane;
import io.github.readfall.canvas.StripScene;
import io.github.readfall.canvas.Thing;
import io.github.readfall.desk.Chosen;
import io.github.readfall.desk.Desk;
import io.github.readfall.desk.Shown;
import io.github.readfall.edits.Item;
import io.github.readfall.galley.PlacedBalloon;
import io.github.readfall.geom.Box;
import io.github.readfall.geom.XY;
import io.github.readfall.gesture.Grip;
import io.github.readfall.gesture.Grips;
import io.github.readfall.gesture.Places;
import io.github.readfall.wording.Wording;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

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
    List<Box> frames = new ArrayList<>();
    List<XY> grips = new ArrayList<>();
    List<XY> bars = new ArrayList<>();
    List<XY> points = new ArrayList<>();
    for (Item item : chosen.items()) {
      boolean isPoint = item instanceof Item.Tip || item instanceof Item.Mouth;
      places
          .box(item)
          .ifPresent(box -> (isPoint ? List.<Box>of() : List.of(box)).forEach(frames::add));
      if (isPoint) {
        places.box(item).ifPresent(box -> points.add(box.centre()));
      }
    }
    chosen.balloons().forEach(id -> places.tip(id).ifPresent(points::add));
    chosen
        .single()
        .ifPresent(
            item ->
                Grips.of(shown.galley(), item)
                    .forEach(
                        grip ->
                            (grip.grip() instanceof Grip.Gutter ? bars : grips).add(grip.at())));
    pane.hold(new Held(frames, grips, bars, points, hands.band()));
    pane.things(things(shown, places));
  }

  private List<Thing> things(Shown shown, Places places) {
    List<Thing> things = new ArrayList<>();
    for (Item item : places.all()) {
      places
          .box(item)
          .ifPresent(
              box ->
                  things.add(
                      new Thing(
                          name(item, places),
                          description(item, shown, places),
                          box,
                          chosen.items().contains(item))));
    }
    return things;
  }

  private static String name(Item item, Places places) {
    return item instanceof Item.Balloon balloon
        ? places.balloon(balloon.id()).map(StripChoice::said).orElse("")
        : ItemWords.of(item);
  }

  private static String said(PlacedBalloon balloon) {
    return Wording.of("thing.said", balloon.cue().speaker(), balloon.cue().text().plain().strip());
  }

  private static String description(Item item, Shown shown, Places places) {
    Box box = places.box(item).orElseThrow();
    if (!(item instanceof Item.Balloon one)) {
      return Wording.of("thing.box", whole(box.x()), whole(box.y()), size(box));
    }
    PlacedBalloon balloon = places.balloon(one.id()).orElseThrow();
    long found =
        shown.findings().stream()
            .filter(finding -> finding.where().balloons().contains(one.id()))
            .count();
    return Wording.of(
        balloon.pinned() ? "thing.pinned" : "thing.balloon",
        one.id(),
        balloon.panel(),
        size(box),
        found);
  }

  private static String size(Box box) {
    return Wording.of("thing.size", whole(box.width()), whole(box.height()));
  }

  private static String whole(double px) {
    return Long.toString(Math.round(px));
  }
}
