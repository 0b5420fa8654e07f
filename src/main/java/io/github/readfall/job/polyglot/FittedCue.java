package io.github.readfall.job.polyglot;

import io.github.readfall.lettering.typeset.Tightening;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The fit of a cue of one edition in a given outline.
 *
 * @param refit its lettering
 * @param verdict what it needs
 * @param expected true if its words are a stand-in
 */
public record FittedCue(Refit refit, Verdict verdict, boolean expected) {

  /** Its id. */
  public String id() {
    return refit.balloon().cue().id();
  }

  /** The tightness of its lettering. */
  public Tightening tightening() {
    return refit.tightening();
  }

  /**
   * Its need, short enough for a cell of a table: {@code fits}, {@code leading 0.95}, {@code +12 %}
   * of width and height, or {@code -9} letters.
   */
  public String inShort() {
    return switch (verdict) {
      case AS_IS -> "fits";
      case TIGHTER -> tightened();
      case LARGER -> String.format(Locale.ROOT, "+%.0f %%", Math.ceil((refit.growBy() - 1) * 100));
      case SHORTER -> "\u2212" + refit.lettersTooMany();
    };
  }

  private String tightened() {
    Tightening tightening = tightening().inHundredths();
    List<String> parts = new ArrayList<>();
    if (tightening.size() < 1) {
      parts.add("size " + figure(tightening.size()));
    }
    if (tightening.leading() < 1) {
      parts.add("leading " + figure(tightening.leading()));
    }
    if (tightening.trackingEm() < 0) {
      parts.add("spacing \u2212" + figure(-tightening.trackingEm()) + " em");
    }
    return String.join(", ", parts);
  }

  private static String figure(double hundredths) {
    return String.format(Locale.ROOT, "%.2f", hundredths);
  }
}
