package io.github.readfall.type.text;

/**
 * Which full-width marks give up their empty half: at a line's end, and where two of them meet.
 * Letters that fill a square each are centred by their pens' way, so half a square of nothing at
 * one end puts a line beside the middle.
 */
public enum Compression {
  /** None. */
  NONE("", ""),
  /** Brackets, stops and commas: W3C JLREQ, classes cl-01, cl-02, cl-06 and cl-07. */
  JAPANESE(Marks.OPENING, Marks.CLOSING + "、。，．"),
  /**
   * Quotes, brackets and all stops, those only that a face draws to one side: W3C CLREQ, width
   * adjustment of punctuation marks.
   */
  CHINESE(Marks.OPENING, Marks.CLOSING + "、。，．：；！？");

  /** Full-width brackets and quotes; which half is empty, the face's ink says. */
  private static final class Marks {
    static final String OPENING = "（〔［｛〈《「『【〘〖｟“‘";
    static final String CLOSING = "）〕］｝〉》」』】〙〗｠”’";
  }

  private final String opening;
  private final String closing;

  Compression(String opening, String closing) {
    this.opening = opening;
    this.closing = closing;
  }

  /** Whether a mark's left half may be empty. */
  boolean opens(int codePoint) {
    return opening.indexOf(codePoint) >= 0;
  }

  /** Whether a mark's right half may be empty. */
  boolean closes(int codePoint) {
    return closing.indexOf(codePoint) >= 0;
  }

  /** Whether a text has any of the marks. */
  boolean isIn(String text) {
    return text.codePoints().anyMatch(c -> opens(c) || closes(c));
  }
}
