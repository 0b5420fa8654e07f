package io.github.readfall.cli;

import io.github.readfall.base.viewing.LetterKind;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Measured heights of lettering that exists, to be mixed into a command. */
final class AuditOptions {

  /** Wider than any canvas that people draw on. */
  private static final double MOST_PX = 20_000;

  @Option(
      names = "--capital-px",
      paramLabel = "PX",
      description = "Audit existing lettering by the height of its capitals; needs no script.")
  private Optional<Double> capitalPx = Optional.empty();

  @Option(names = "--x-height-px", paramLabel = "PX", description = "The same for a lower-case x.")
  private Optional<Double> heightOfXPx = Optional.empty();

  @Option(
      names = "--ideograph-px",
      paramLabel = "PX",
      description = "The same for an ideograph or a Korean syllable.")
  private Optional<Double> ideographPx = Optional.empty();

  @Option(
      names = "--strip-width",
      paramLabel = "PX",
      description = "Width of the measured strip (default: as in series.toml, or 1600).")
  private Optional<Double> stripWidthPx = Optional.empty();

  /** Returns true if a height was given, so that an audit is wanted. */
  boolean isRequested() {
    return capitalPx.isPresent() || heightOfXPx.isPresent() || ideographPx.isPresent();
  }

  /** The heights given, in strip pixels. */
  Map<LetterKind, Double> heightsPx() throws CannotProceed {
    List<String> faults = new ArrayList<>();
    Map<LetterKind, Double> heights = new EnumMap<>(LetterKind.class);
    put(LetterKind.CAPITAL, capitalPx, heights, faults);
    put(LetterKind.X_HEIGHT, heightOfXPx, heights, faults);
    put(LetterKind.IDEOGRAPH, ideographPx, heights, faults);
    if (!faults.isEmpty()) {
      throw new CannotProceed(faults.get(0));
    }
    return heights;
  }

  private static void put(
      LetterKind kind, Optional<Double> px, Map<LetterKind, Double> heights, List<String> faults) {
    px.ifPresent(
        height -> {
          if (isLength(height)) {
            heights.put(kind, height);
          } else {
            faults.add(
                "--"
                    + kind.word()
                    + "-px is a height in strip pixels: give a number above 0, up to 20000.");
          }
        });
  }

  /** The width given, in strip pixels; empty to leave it to the series. */
  Optional<Double> stripWidthPx() throws CannotProceed {
    if (stripWidthPx.isPresent() && !isLength(stripWidthPx.get())) {
      throw new CannotProceed(
          "--strip-width is a width in pixels: give a number above 0, up to 20000.");
    }
    return stripWidthPx;
  }

  private static boolean isLength(double px) {
    return px > 0 && px <= MOST_PX;
  }
}
