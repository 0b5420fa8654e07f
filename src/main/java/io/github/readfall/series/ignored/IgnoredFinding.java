package io.github.readfall.series.ignored;

import java.util.List;
import java.util.OptionalInt;

/**
 * One finding that is set aside: known again by its rule and by what is said where it was found,
 * since numbers of panels and ids of balloons change with the script.
 *
 * @param rule id of the rule that finds it
 * @param panel the panel's place in the script when it was set aside, from 1; empty where it
 *     concerns no panel
 * @param cues what the balloons say that it concerns, as {@link #said}; none where it concerns none
 * @param reason why it stays as it is; never blank
 * @param line of the file that it stands on, from 1
 */
public record IgnoredFinding(
    String rule, OptionalInt panel, List<String> cues, String reason, int line) {

  private static final String COLON = ": ";

  public IgnoredFinding {
    cues = List.copyOf(cues);
  }

  /** A cue as it is written in the file: {@code SPEAKER: words}, white space collapsed. */
  static String said(String speaker, String words) {
    return speaker + COLON + String.join(" ", words.strip().split("\\s+"));
  }

  /** Who says it. */
  static String speaker(String said) {
    int colon = said.indexOf(COLON);
    return colon < 0 ? "" : said.substring(0, colon);
  }

  /** What is said. */
  static String words(String said) {
    int colon = said.indexOf(COLON);
    return colon < 0 ? said : said.substring(colon + COLON.length());
  }
}
