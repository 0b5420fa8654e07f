package io.github.readfall.series.ignored;

import java.util.List;
import java.util.OptionalInt;

/**
 * An ignored finding: an entry of ignored.toml. It is recognised by its rule and the words of its
 * balloons, because panel numbers and balloon ids change with the script.
 *
 * @param rule id of the rule, e.g. {@code space/crowded}
 * @param panel the panel's number in the script when the entry was written, from 1; empty if the
 *     finding concerns no panel
 * @param cues what its balloons say, each as {@code SPEAKER: words}; empty if it concerns none
 * @param reason why it is ignored; never blank
 * @param line of the entry in the file, from 1
 */
public record IgnoredFinding(
    String rule, OptionalInt panel, List<String> cues, String reason, int line) {

  private static final String COLON = ": ";

  public IgnoredFinding {
    cues = List.copyOf(cues);
  }

  /** A cue as written in the file: {@code SPEAKER: words}, white space collapsed. */
  static String cueText(String speaker, String words) {
    return speaker + COLON + String.join(" ", words.strip().split("\\s+"));
  }

  /** The speaker of a cue in the file; empty if it names none. */
  static String speaker(String cueText) {
    int colon = cueText.indexOf(COLON);
    return colon < 0 ? "" : cueText.substring(0, colon);
  }

  /** The words of a cue in the file. */
  static String words(String cueText) {
    int colon = cueText.indexOf(COLON);
    return colon < 0 ? cueText : cueText.substring(colon + COLON.length());
  }
}
