package io.github.readfall.window.model;

import io.github.readfall.strip.edits.StripItem;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The selected elements of the strip. Used on the event thread. */
public final class Selection {

  private final List<Runnable> listeners = new ArrayList<>();
  private Set<StripItem> items = Set.of();

  /** Adds a listener for changes of the selection. */
  public void onChange(Runnable listener) {
    listeners.add(listener);
  }

  public Set<StripItem> items() {
    return items;
  }

  /** The only selected element; empty if there are none or several. */
  public Optional<StripItem> single() {
    return items.size() == 1 ? items.stream().findFirst() : Optional.empty();
  }

  /** Ids of the balloons that are selected, or whose tails are. */
  public Set<String> balloons() {
    return items.stream()
        .flatMap(
            item -> {
              if (item instanceof StripItem.Balloon balloon) {
                return Stream.of(balloon.id());
              }
              return item instanceof StripItem.Tip tip ? Stream.of(tip.balloon()) : Stream.empty();
            })
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** Selects these and no others. */
  public void select(Set<StripItem> others) {
    if (!others.equals(items)) {
      items = Set.copyOf(others);
      listeners.forEach(Runnable::run);
    }
  }

  /** Adds an element to the selection, or removes it. */
  public void toggle(StripItem item) {
    Set<StripItem> next = new LinkedHashSet<>(items);
    if (!next.remove(item)) {
      next.add(item);
    }
    select(next);
  }

  /** Selects nothing. */
  public void clear() {
    select(Set.of());
  }
}
