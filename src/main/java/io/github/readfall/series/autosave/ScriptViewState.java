package io.github.readfall.series.autosave;

import java.util.Set;

/**
 * How a script was last looked at. What views call their zooms, layers and severities is for them
 * to know.
 *
 * @param caretLine where the caret stood, from 1
 * @param caretColumn from 1
 * @param stripTopPx height of the strip at the view's upper edge, in strip pixels, from 0
 * @param zoom how large the strip is seen; empty for the usual
 * @param phone name of the phone; empty for the usual one
 * @param layers what is shown over the strip
 * @param severities of the findings that are listed
 * @param findingsFilter what the list of findings is narrowed to; empty for all
 */
public record ScriptViewState(
    int caretLine,
    int caretColumn,
    double stripTopPx,
    String zoom,
    String phone,
    Set<String> layers,
    Set<String> severities,
    String findingsFilter) {

  /** How a script is looked at first. */
  public static final ScriptViewState FIRST =
      new ScriptViewState(
          1,
          1,
          0,
          "",
          "",
          Set.of("path", "gaps", "overflow", "keep_clear", "cuts"),
          Set.of("error", "warning", "note"),
          "");

  /** Brings what makes no sense back to what does: a file may say anything. */
  public ScriptViewState {
    caretLine = Math.max(1, caretLine);
    caretColumn = Math.max(1, caretColumn);
    stripTopPx = stripTopPx >= 0 && stripTopPx < 1e9 ? stripTopPx : 0;
    layers = Set.copyOf(layers);
    severities = Set.copyOf(severities);
  }
}
