package io.github.readfall.art.panels;

import java.util.ArrayList;
import java.util.List;

/**
 * Fits a straight line to the points at which an edge was found: the line that most of it is on, as
 * in random sample consensus (Fischler and Bolles 1981, Communications of the ACM 24(6)), but over
 * all pairs of evenly spread samples, so that every run finds the same.
 */
final class EdgeFit {

  /** Value for places at which the edge was not found. */
  static final int NOWHERE = -1;

  // House defaults, found on generated strips.
  private static final int SAMPLES = 24;
  private static final int MOST_LOOKED_AT = 400;
  private static final double STEEPEST = 0.35;

  /** Shares from which an inner line is the edge, and what is outside it juts out. */
  private static final double INNER_OF_ALL = 0.3;

  private static final double INNER_OF_BEST = 0.6;

  /** A line that reaches both corners counts as much as one that half of the edge is on. */
  private static final double CORNERED = 0.5;

  private static final double CORNER = 0.1; // of the edge
  private static final double OF_CORNER = 0.7;
  private static final double LEAST_CORNERED = 0.25;

  private final int[] met;
  private final int from;
  private final int end;
  private final double tolerance;
  private final List<Edge> lines = new ArrayList<>();

  private EdgeFit(int[] met, int from, int end, double tolerance) {
    this.met = met;
    this.from = from;
    this.end = end;
    this.tolerance = tolerance;
  }

  /**
   * The line; with share 0 if the edge was found nowhere.
   *
   * @param met for each place along the edge its depth, the less the farther out, or {@link
   *     #NOWHERE}; not empty
   * @param tolerance distance from the line that still counts as on it
   */
  static Edge of(int[] met, double tolerance) {
    int margin = met.length / 50; // round corners
    return new EdgeFit(met, margin, met.length - margin, tolerance).fitted();
  }

  private Edge fitted() {
    double step = (end - 1 - from) / (double) (SAMPLES - 1);
    for (int i = 0; i < SAMPLES; i++) {
      for (int j = i; j < SAMPLES; j++) {
        consider((int) (from + i * step), (int) (from + j * step));
      }
    }
    double best = lines.stream().mapToDouble(Edge::share).max().orElse(0);
    double middle = (from + end) / 2.0;
    double least = Math.min(best, Math.max(INNER_OF_ALL, INNER_OF_BEST * best));
    double inmost =
        lines.stream()
            .filter(line -> line.share() >= least)
            .mapToDouble(line -> line.at(middle))
            .max()
            .orElse(0);
    return lines.stream()
        .filter(line -> line.share() >= least && line.at(middle) >= inmost - 2 * tolerance)
        .max((a, b) -> Double.compare(a.share(), b.share()))
        .map(this::settled)
        .orElse(new Edge(0, 0, 0));
  }

  /** Considers the line through two places; through one, it is level. */
  private void consider(int one, int other) {
    if (met[one] == NOWHERE || met[other] == NOWHERE) {
      return;
    }
    double slope = one == other ? 0 : (met[other] - met[one]) / (double) (other - one);
    if (Math.abs(slope) <= STEEPEST) {
      double at = met[one] - slope * one;
      lines.add(new Edge(at, slope, worth(at, slope)));
    }
  }

  private double worth(double at, double slope) {
    double all = share(from, end, at, slope);
    int corner = Math.max(1, (int) (CORNER * (end - from)));
    boolean cornered =
        all >= LEAST_CORNERED
            && all < CORNERED
            && share(from, from + corner, at, slope) >= OF_CORNER
            && share(end - corner, end, at, slope) >= OF_CORNER;
    return cornered ? CORNERED : all;
  }

  private double share(int from, int end, double at, double slope) {
    int step = Math.max(1, (end - from) / MOST_LOOKED_AT);
    int on = 0;
    int looked = 0;
    for (int i = from; i < end; i += step) {
      looked++;
      on += isOn(i, at, slope) ? 1 : 0;
    }
    return (double) on / looked;
  }

  private boolean isOn(int i, double at, double slope) {
    return met[i] != NOWHERE && Math.abs(met[i] - at - slope * i) <= tolerance;
  }

  /** The line moved to the middle of the points on it. */
  private Edge settled(Edge line) {
    double sum = 0;
    int on = 0;
    for (int i = from; i < end; i++) {
      if (isOn(i, line.at(), line.slope())) {
        sum += met[i] - line.at(i);
        on++;
      }
    }
    return on == 0 ? line : new Edge(line.at() + sum / on, line.slope(), line.share());
  }
}
