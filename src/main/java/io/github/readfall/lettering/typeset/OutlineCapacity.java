package io.github.readfall.lettering.typeset;

import io.github.readfall.type.text.LineBreaks;

/**
 * Computes how much of one text fits given outlines.
 *
 * <p>A beginning may end inside a word, since in another text a word could end there. It is set by
 * the language's breaks at the text's own size and margin, in lines as full as they can be.
 */
public final class OutlineCapacity {

  private final ShapedCue cue;
  private final WordTails tails;

  private OutlineCapacity(ShapedCue cue, WordTails tails) {
    this.cue = cue;
    this.tails = tails;
  }

  /** The beginnings of a cue's text. */
  public static OutlineCapacity of(ShapedCue cue, LineBreaks breaks) {
    return new OutlineCapacity(cue, new WordTails(cue.passage(), breaks));
  }

  /**
   * The length of the longest beginning that fits an outline with its margin: code points as
   * lettered, without a space at its end; 0 if not even the first letter fits.
   *
   * @param room in an outline that a cue lettered alike could have
   */
  public int charactersInto(OutlineRoom room) {
    OutlineFiller.Reach reach = new OutlineFiller(cue.table(), tails, cue.rules(), room).furthest();
    int start =
        reach.segments() == 0 ? 0 : cue.passage().segments().get(reach.segments() - 1).end();
    String text = cue.passage().text().substring(0, start + reach.units()).stripTrailing();
    return text.codePointCount(0, text.length());
  }
}
