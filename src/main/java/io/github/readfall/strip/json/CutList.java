package io.github.readfall.strip.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Reads the cuts in layout.json. */
final class CutList {

  private static final double HUNDREDTH = 0.01; // of a pixel, as lengths are written

  private final Members root;
  private final LayoutFindings faults;

  CutList(Members root, LayoutFindings faults) {
    this.root = root;
    this.faults = faults;
  }

  /**
   * The cuts from the top, each once; empty if none are given.
   *
   * @param heightPx of the strip: a cut there or at the top is none
   */
  Optional<List<Double>> read(double heightPx) {
    if (!root.value("cuts").map(Json.Items.class::isInstance).orElse(false)) {
      root.items("cuts"); // reports what is no list
      return Optional.empty();
    }
    List<Json> items = root.items("cuts");
    List<Double> cuts = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      cut("cuts[" + i + "]", items.get(i), heightPx).ifPresent(cuts::add);
    }
    List<Double> rising = List.copyOf(new TreeSet<>(cuts));
    if (!rising.equals(cuts)) {
      faults.warning(
          "cuts",
          root.offsetOf("cuts"),
          "The cuts are not in order down the strip, so they are sorted.",
          "Write each height once, the smallest first.");
    }
    return Optional.of(rising);
  }

  private Optional<Double> cut(String name, Json json, double heightPx) {
    Optional<Double> cut = root.number(name, json, false);
    if (cut.isEmpty() || Math.abs(cut.get() - heightPx) <= HUNDREDTH) {
      return Optional.empty();
    }
    if (cut.get() >= HUNDREDTH && cut.get() < heightPx) {
      return cut.map(y -> Math.rint(y * 100) / 100);
    }
    faults.warning(
        "outside",
        json.offset(),
        name
            + " is outside the strip, which is "
            + Math.round(heightPx)
            + " px high, and is left out.",
        "Delete it, or make the strip taller.");
    return Optional.empty();
  }
}
