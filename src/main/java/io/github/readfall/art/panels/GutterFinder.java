package io.github.readfall.art.panels;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Tells gutters from flat parts of pictures among bands. */
final class GutterFinder {

  private final Tolerance tolerance;
  private final List<Band> gutters = new ArrayList<>();

  private GutterFinder(Tolerance tolerance) {
    this.tolerance = tolerance;
  }

  /**
   * The bands that are gutters. A single one is, if it ends evenly at both edges or has the colour
   * of one that does; of several adjacent ones, those with the colour of a gutter elsewhere, and if
   * there is none, the one that ends most evenly.
   */
  static List<Band> among(List<Band> bands, Tolerance tolerance) {
    Map<Integer, List<Band>> runs = new TreeMap<>();
    bands.forEach(band -> runs.computeIfAbsent(band.run(), run -> new ArrayList<>()).add(band));
    GutterFinder gutters = new GutterFinder(tolerance);
    runs.values().stream().filter(run -> run.size() == 1).forEach(gutters::takeStraight);
    runs.values().stream().filter(run -> run.size() == 1).forEach(gutters::takeKnown);
    runs.values().stream().filter(run -> run.size() > 1).forEach(gutters::takeBest);
    gutters.gutters.sort(Comparator.comparingInt(Band::top));
    return List.copyOf(gutters.gutters);
  }

  private void takeStraight(List<Band> run) {
    run.stream().filter(Band::isStraight).forEach(gutters::add);
  }

  private void takeKnown(List<Band> run) {
    List<Band> known = run.stream().filter(this::isKnown).toList();
    known.stream().filter(band -> !gutters.contains(band)).forEach(gutters::add);
  }

  private void takeBest(List<Band> run) {
    if (run.stream().anyMatch(this::isKnown)) {
      takeKnown(run);
      return;
    }
    Comparator<Band> evenness =
        Comparator.comparingDouble(band -> band.straightAbove() + band.straightBelow());
    run.stream().max(evenness.thenComparingInt(Band::height)).ifPresent(gutters::add);
  }

  private boolean isKnown(Band band) {
    return gutters.stream()
        .anyMatch(other -> Colours.distance(band.colour(), other.colour()) <= tolerance.colour());
  }
}
