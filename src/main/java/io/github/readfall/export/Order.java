package io.github.readfall.export;

import io.github.readfall.base.files.Batch;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * An order for exports.
 *
 * @param kinds each counts once
 * @param tags languages, BCP 47; none for the usual ones of each kind
 * @param wish options
 */
public record Order(Set<Kind> kinds, List<String> tags, Wish wish) {

  /**
   * Options of an export.
   *
   * @param delivery name of the delivery that the slices are for; empty for the usual one
   * @param liveText true for letters in an SVG as text that can be edited, not as outlines
   */
  public record Wish(Optional<String> delivery, boolean liveText) {
    public static final Wish USUAL = new Wish(Optional.empty(), false);
  }

  /** An order with the usual options. */
  public Order(Set<Kind> kinds, List<String> tags) {
    this(kinds, tags, Wish.USUAL);
  }

  public Order {
    kinds = Collections.unmodifiableSet(new LinkedHashSet<>(kinds));
    tags = List.copyOf(tags);
  }

  /**
   * The languages that have to be read for it.
   *
   * @param there in which there are translations
   */
  List<String> languages(List<String> there) {
    if (!tags.isEmpty()) {
      return tags;
    }
    return kinds.stream().anyMatch(Kind::isForAllLanguages) ? there : List.of();
  }

  /**
   * The files of all its kinds.
   *
   * @param strips the original's first, then those of {@link #languages}
   */
  List<Batch> batches(List<FinishedStrip> strips) {
    List<Batch> batches = new ArrayList<>();
    for (Kind kind : kinds) {
      batches.addAll(Exports.of(kind, wanted(kind, strips), wish));
    }
    return batches;
  }

  private List<FinishedStrip> wanted(Kind kind, List<FinishedStrip> strips) {
    if (tags.isEmpty()) {
      return kind.isForAllLanguages() ? strips : strips.subList(0, 1);
    }
    return strips.stream().filter(strip -> tags.contains(strip.language())).toList();
  }
}
