package io.github.readfall.type.text;

import io.github.readfall.type.font.GlyphRow;
import java.util.Optional;

/**
 * A run and its glyphs.
 *
 * @param run its place and face
 * @param row its glyphs, if parts of them may be taken for parts of the text: read from left to
 *     right, in a face whose letters keep their shape beside any others
 */
record ShapedRun(Run run, Optional<GlyphRow> row) {

  static ShapedRun of(Run run, String text) {
    boolean keeps = !run.rightToLeft() && !run.type().face().isContextual();
    return new ShapedRun(
        run, keeps ? Optional.of(shaped(run, text, run.start(), run.end())) : Optional.empty());
  }

  /**
   * The glyphs of a part of the run, shaped by itself.
   *
   * @param shown its visible text
   */
  GlyphRow glyphs(String text, Run part, String shown) {
    boolean aloof =
        part.end() == run.end()
            || (run.type().face().isAdditive() && text.charAt(part.end()) == ' ');
    boolean asWritten = shown.length() == part.end() - part.start() && !SoftHyphen.isIn(text);
    return row.isPresent() && aloof && asWritten
        ? row.get().slice(part.start() - run.start(), part.end() - run.start())
        : shaped(part, shown, 0, shown.length());
  }

  private static GlyphRow shaped(Run run, String text, int start, int end) {
    char[] chars = text.substring(start, end).toCharArray();
    return run.type().face().shape(chars, 0, chars.length, run.rightToLeft());
  }
}
