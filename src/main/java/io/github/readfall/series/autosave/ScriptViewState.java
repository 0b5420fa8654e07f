package io.github.readfall.series.autosave;

import java.util.Set;

/**
 * The last view of a script. The names of zooms, layers and severities are the views' own.
 *
 * @param caretLine line of the caret, from 1
 * @param caretColumn from 1
 * @param stripTopPx height of the strip at the view's upper edge, in strip pixels, from 0
 * @param zoom of the strip; empty for the usual
 * @param phone name of the phone; empty for the usual one
 * @param layers shown over the strip
 * @param severities of the findings that are listed
 * @param findingsFilter text by which findings are filtered; empty for all
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

  /** The first view of a script. */
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

  /** Corrects meaningless values: a file may contain anything. */
  public ScriptViewState {
    caretLine = Math.max(1, caretLine);
    caretColumn = Math.max(1, caretColumn);
    stripTopPx = stripTopPx >= 0 && stripTopPx < 1e9 ? stripTopPx : 0;
    layers = Set.copyOf(layers);
    severities = Set.copyOf(severities);
  }
}
