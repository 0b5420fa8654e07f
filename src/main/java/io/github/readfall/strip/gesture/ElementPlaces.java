package io.github.readfall.strip.gesture;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.strip.KeepClear;
import io.github.readfall.strip.Mouth;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.edits.StripItem;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.type.balloon.Tail;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the places of elements on a strip.
 *
 * @param galley the strip
 */
public record ElementPlaces(Galley galley) {

  /** The box of an element, without size for a point; empty if it is gone. */
  public Optional<Box> box(StripItem item) {
    if (item instanceof StripItem.Balloon balloon) {
      return balloon(balloon.id()).map(PlacedBalloon::box);
    }
    if (item instanceof StripItem.Tip tip) {
      return tips(tip.balloon()).stream().skip(tip.tail()).findFirst().map(ElementPlaces::point);
    }
    if (item instanceof StripItem.Panel panel) {
      return galley.panel(panel.panel()).map(PanelBox::box);
    }
    if (item instanceof StripItem.Area area) {
      return area.index() < galley.keepClear().size()
          ? Optional.of(galley.keepClear().get(area.index()).box())
          : Optional.empty();
    }
    if (item instanceof StripItem.Mouth mouth) {
      return galley.mouth(mouth.panel(), mouth.speaker()).map(Mouth::at).map(ElementPlaces::point);
    }
    throw new IllegalArgumentException("an element without a place: " + item);
  }

  private static Box point(XY at) {
    return new Box(at.x(), at.y(), 0, 0);
  }

  /** A balloon of the strip. */
  public Optional<PlacedBalloon> balloon(String id) {
    return galley.balloons().stream().filter(balloon -> balloon.id().equals(id)).findFirst();
  }

  /** The tips of a balloon's tails. */
  public List<XY> tips(String balloon) {
    return balloon(balloon).stream()
        .flatMap(placed -> placed.tails().stream())
        .map(Tail::tip)
        .toList();
  }

  /** Every element, in script order, panel by panel. */
  public List<StripItem> all() {
    List<StripItem> all = new ArrayList<>();
    for (PanelBox panel : galley.panels()) {
      all.add(new StripItem.Panel(panel.panel()));
      galley.balloonsOf(panel.panel()).forEach(b -> all.add(new StripItem.Balloon(b.id())));
      galley.mouths().stream()
          .filter(mouth -> mouth.panel() == panel.panel())
          .forEach(mouth -> all.add(new StripItem.Mouth(mouth.panel(), mouth.speaker())));
      areas(panel.box()).forEach(all::add);
    }
    galley.balloons().stream()
        .map(balloon -> (StripItem) new StripItem.Balloon(balloon.id()))
        .filter(item -> !all.contains(item))
        .forEach(all::add);
    for (int i = 0; i < galley.keepClear().size(); i++) {
      if (!all.contains(new StripItem.Area(i))) {
        all.add(new StripItem.Area(i));
      }
    }
    return all;
  }

  private List<StripItem> areas(Box panel) {
    List<StripItem> areas = new ArrayList<>();
    List<KeepClear> all = galley.keepClear();
    for (int i = 0; i < all.size(); i++) {
      if (panel.covers(all.get(i).box().centre())) {
        areas.add(new StripItem.Area(i));
      }
    }
    return areas;
  }
}
