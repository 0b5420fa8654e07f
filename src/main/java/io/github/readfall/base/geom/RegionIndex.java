package io.github.readfall.base.geom;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Finds elements near a box without examining all of them.
 *
 * @param <T> the elements
 */
public final class RegionIndex<T> {

  private final STRtree tree = new STRtree();
  private final List<T> items;

  private RegionIndex(List<T> items, Function<T, Box> bounds) {
    this.items = List.copyOf(items);
    for (int i = 0; i < items.size(); i++) {
      tree.insert(envelope(bounds.apply(items.get(i))), i);
    }
    tree.build();
  }

  /**
   * An index of elements that have a place.
   *
   * @param bounds of each element
   */
  public static <T> RegionIndex<T> of(List<T> items, Function<T, Box> bounds) {
    return new RegionIndex<>(items, bounds);
  }

  /** The elements whose bounds meet a box, in the order they were given. */
  public List<T> near(Box box) {
    List<Integer> places = new ArrayList<>();
    tree.query(envelope(box), place -> places.add((Integer) place));
    Collections.sort(places);
    return places.stream().map(items::get).toList();
  }

  private static Envelope envelope(Box box) {
    return new Envelope(box.x(), box.right(), box.y(), box.bottom());
  }
}
