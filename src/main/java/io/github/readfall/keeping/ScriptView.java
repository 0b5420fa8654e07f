package io.github.readfall.keeping;

/**
 * How a script was last looked at.
 *
 * @param caretLine where the caret stood, from 1
 * @param caretColumn from 1
 * @param stripTopPx height of the strip at the view's upper edge, in strip pixels, from 0
 * @param zoom shown per strip pixel; more than 0
 * @param phone name of the phone; empty for the usual one
 * @param layersOn whether what was measured is shown over the strip
 * @param findingsFilter what the list of findings is narrowed to; empty for all
 */
public record ScriptView(
    int caretLine,
    int caretColumn,
    double stripTopPx,
    double zoom,
    String phone,
    boolean layersOn,
    String findingsFilter) {

  /**
   * How a script is looked at first. Zoom 0.25 shows a strip 1600 px wide in 400; house default.
   */
  public static final ScriptView FIRST = new ScriptView(1, 1, 0, 0.25, "", true, "");

  /** Brings what makes no sense back to what does: a file may say anything. */
  public ScriptView {
    caretLine = Math.max(1, caretLine);
    caretColumn = Math.max(1, caretColumn);
    stripTopPx = stripTopPx >= 0 && stripTopPx < 1e9 ? stripTopPx : 0;
    zoom = zoom >= 0.01 && zoom <= 100 ? zoom : 0.25;
  }
}
