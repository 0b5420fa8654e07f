package io.github.readfall.strip.gesture;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.strip.Mouth;
import io.github.readfall.strip.edits.StripItem;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Finds the grip under the pointer. */
public final class Grips {

  private final ElementPlaces places;
  private final Set<StripItem> chosen;
  private final double reachPx;

  /**
   * A search on a strip.
   *
   * @param chosen the selection: it has grips at its sides, and its panel can be moved
   * @param reachPx how far from a grip the pointer may be, in strip pixels
   */
  public Grips(Galley galley, Set<StripItem> chosen, double reachPx) {
    this.places = new ElementPlaces(galley);
    this.chosen = Set.copyOf(chosen);
    this.reachPx = reachPx;
  }

  /** The grip at a place: small elements before large ones, and grips before their elements. */
  public Grip at(XY at) {
    return tip(at)
        .or(() -> edge(at))
        .or(() -> gutter(at))
        .or(() -> item(at).map(Grip.Body::new))
        .orElseGet(Grip.Background::new);
  }

  /** The grips that a selected element shows, with their places. */
  public static List<Shown> of(Galley galley, StripItem item) {
    List<Shown> all = new ArrayList<>();
    new ElementPlaces(galley).box(item).ifPresent(box -> edges(item, box, all));
    return all;
  }

  /** A grip and its place. */
  public record Shown(Grip grip, XY at) {}

  private static void edges(StripItem item, Box box, List<Shown> all) {
    if (!isSized(item)) {
      return;
    }
    for (int dx = -1; dx <= 1; dx++) {
      for (int dy = -1; dy <= 1; dy++) {
        if (dx != 0 || dy != 0) {
          double x = box.centre().x() + dx * box.width() / 2;
          double y = box.centre().y() + dy * box.height() / 2;
          all.add(new Shown(new Grip.Edge(item, dx, dy), new XY(x, y)));
        }
      }
    }
    if (item instanceof StripItem.Panel panel && box.y() > 0) {
      all.add(new Shown(new Grip.Gutter(panel.panel()), gutterAt(box)));
    }
  }

  /** The place to the left above the border, where no other grip is. */
  private static XY gutterAt(Box box) {
    return new XY(box.x() + box.width() / 4, box.y());
  }

  private static boolean isSized(StripItem item) {
    return item instanceof StripItem.Balloon
        || item instanceof StripItem.Panel
        || item instanceof StripItem.Area;
  }

  private List<Shown> shown() {
    return chosen.size() == 1 ? of(places.galley(), chosen.iterator().next()) : List.of();
  }

  private Optional<Grip> edge(XY at) {
    return nearest(shown().stream().filter(s -> s.grip() instanceof Grip.Edge).toList(), at);
  }

  private Optional<Grip> gutter(XY at) {
    return nearest(shown().stream().filter(s -> s.grip() instanceof Grip.Gutter).toList(), at);
  }

  private Optional<Grip> nearest(List<Shown> grips, XY at) {
    return grips.stream()
        .filter(grip -> grip.at().distanceTo(at) <= reachPx)
        .min(Comparator.comparingDouble(grip -> grip.at().distanceTo(at)))
        .map(Shown::grip);
  }

  private Optional<Grip> tip(XY at) {
    return nearest(
        chosen.stream()
            .flatMap(item -> balloonOf(item).stream())
            .flatMap(id -> tips(id).stream())
            .toList(),
        at);
  }

  private List<Shown> tips(String balloon) {
    List<Shown> tips = new ArrayList<>();
    for (XY tip : places.tips(balloon)) {
      tips.add(new Shown(new Grip.Body(new StripItem.Tip(balloon, tips.size())), tip));
    }
    return tips;
  }

  private static Optional<String> balloonOf(StripItem item) {
    if (item instanceof StripItem.Balloon balloon) {
      return Optional.of(balloon.id());
    }
    return item instanceof StripItem.Tip tip ? Optional.of(tip.balloon()) : Optional.empty();
  }

  private Optional<StripItem> item(XY at) {
    return mouth(at).or(() -> balloon(at)).or(() -> area(at)).or(() -> panel(at));
  }

  private Optional<StripItem> mouth(XY at) {
    return places.galley().mouths().stream()
        .filter(mouth -> mouth.at().distanceTo(at) <= reachPx)
        .min(Comparator.comparingDouble((Mouth mouth) -> mouth.at().distanceTo(at)))
        .map(mouth -> new StripItem.Mouth(mouth.panel(), mouth.speaker()));
  }

  private Optional<StripItem> balloon(XY at) {
    return places.galley().balloons().stream()
        .filter(balloon -> balloon.box().covers(at))
        .min(Comparator.comparingDouble((PlacedBalloon balloon) -> area(balloon.box())))
        .map(balloon -> new StripItem.Balloon(balloon.id()));
  }

  private Optional<StripItem> area(XY at) {
    return IntStream.range(0, places.galley().keepClear().size())
        .filter(i -> places.galley().keepClear().get(i).box().covers(at))
        .boxed()
        .min(Comparator.comparingDouble(i -> area(places.galley().keepClear().get(i).box())))
        .map(StripItem.Area::new);
  }

  /**
   * The selected panel at a place. A panel covers the background, so it moves only once it is
   * selected.
   */
  private Optional<StripItem> panel(XY at) {
    return chosen.stream()
        .filter(item -> item instanceof StripItem.Panel)
        .filter(item -> places.box(item).filter(box -> box.covers(at)).isPresent())
        .findFirst();
  }

  private static double area(Box box) {
    return box.width() * box.height();
  }

  /** The element that a click at a place selects: the one there, else the panel under it. */
  public Optional<StripItem> clicked(XY at) {
    return item(at)
        .or(
            () ->
                places.galley().panels().stream()
                    .filter(panel -> panel.box().covers(at))
                    .min(Comparator.comparingDouble(panel -> area(panel.box())))
                    .map(panel -> new StripItem.Panel(panel.panel())));
  }
}
