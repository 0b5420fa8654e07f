package io.github.readfall.job.polyglot;

import java.util.Locale;

/** What a translated cue needs to fit a given outline. */
public enum Verdict {
  /** Nothing. */
  AS_IS,
  /** Tighter lettering, still legible. */
  TIGHTER,
  /** A larger balloon, for which there is room. */
  LARGER,
  /** Fewer letters: there is no room for a larger balloon. */
  SHORTER;

  /** The word in reports. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
