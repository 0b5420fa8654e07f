package io.github.readfall.plan.place;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.galley.Chain;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes items of set balloons: joined ones together, unless one of them already has a place. */
final class PlacementItems {

  private PlacementItems() {}

  /**
   * The items of balloons.
   *
   * @param balloons in script order
   * @param fixed those that stay where they are, by id
   */
  static List<PlacementItem> of(List<SetBalloon> balloons, Map<String, LaidBalloon> fixed) {
    List<PlacementItem> items = new ArrayList<>();
    List<SetBalloon> chain = new ArrayList<>();
    for (SetBalloon balloon : balloons) {
      if (!chain.isEmpty() && !follows(balloon, chain.get(chain.size() - 1))) {
        items.addAll(items(chain, fixed));
        chain.clear();
      }
      chain.add(balloon);
    }
    items.addAll(items(chain, fixed));
    return items;
  }

  private static boolean follows(SetBalloon balloon, SetBalloon before) {
    return balloon.joinedTo().filter(before.cue().id()::equals).isPresent();
  }

  private static List<PlacementItem> items(List<SetBalloon> chain, Map<String, LaidBalloon> fixed) {
    boolean parted = chain.stream().anyMatch(balloon -> fixed.containsKey(balloon.cue().id()));
    if (chain.size() > 1 && !parted) {
      return List.of(joined(chain));
    }
    List<PlacementItem> items = new ArrayList<>();
    for (int i = 0; i < chain.size(); i++) {
      SetBalloon balloon = chain.get(i);
      Optional<LaidBalloon> place = Optional.ofNullable(fixed.get(balloon.cue().id()));
      items.add(single(balloon, place, i < chain.size() - 1));
    }
    return items;
  }

  private static PlacementItem single(
      SetBalloon balloon, Optional<LaidBalloon> place, boolean goesOn) {
    Optional<XY> at = place.flatMap(LaidBalloon::box).map(box -> at(balloon, box));
    return PlacementItem.of(balloon, at, place.map(LaidBalloon::tailsTo).orElse(List.of()), goesOn);
  }

  private static XY at(SetBalloon balloon, Box box) {
    XY middle = box.centre();
    return new XY(middle.x() - balloon.box().width() / 2, middle.y() - balloon.box().height() / 2);
  }

  private static PlacementItem joined(List<SetBalloon> chain) {
    List<XY> places = Chain.places(chain, true);
    Box box = boxAt(chain.get(0), places.get(0));
    for (int i = 1; i < chain.size(); i++) {
      box = box.union(boxAt(chain.get(i), places.get(i)));
    }
    double x = box.x();
    double y = box.y();
    return new PlacementItem(
        chain,
        places.stream().map(place -> place.plus(-x, -y)).toList(),
        box.width(),
        box.height(),
        Optional.empty(),
        List.of(),
        false);
  }

  private static Box boxAt(SetBalloon balloon, XY at) {
    return new Box(at.x(), at.y(), balloon.box().width(), balloon.box().height());
  }
}
