package io.github.readfall.window.model;

import io.github.readfall.strip.edits.StripItem;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is chosen on the strip, to be worked on. Used on the thread of the window. */
public final class Selection {

  private final List<Runnable> listeners = new ArrayList<>();
  private Set<StripItem> items = Set.of();

  /** Hears when something else is chosen. */
  public void onChange(Runnable listener) {
    listeners.add(listener);
  }

  public Set<StripItem> items() {
    return items;
  }

  /** The one thing that is chosen; empty where there are none or several. */
  public Optional<StripItem> single() {
    return items.size() == 1 ? items.stream().findFirst() : Optional.empty();
  }

  /** Ids of the balloons that are chosen, or whose tails are. */
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

  /** Chooses these and no others. */
  public void select(Set<StripItem> others) {
    if (!others.equals(items)) {
      items = Set.copyOf(others);
      listeners.forEach(Runnable::run);
    }
  }

  /** Chooses something as well, or no more. */
  public void toggle(StripItem item) {
    Set<StripItem> next = new LinkedHashSet<>(items);
    if (!next.remove(item)) {
      next.add(item);
    }
    select(next);
  }

  /** Chooses nothing. */
  public void clear() {
    select(Set.of());
  }
}
