package io.github.readfall.type.text;

/**
 * The full-width marks that give up their empty half: at a line's end, and where two of them meet.
 * Letters that fill a square each are centred by their advances, so half an empty square at one end
 * puts a line beside the middle.
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

  /** Returns true if a mark's left half may be empty. */
  boolean opens(int codePoint) {
    return opening.indexOf(codePoint) >= 0;
  }

  /** Returns true if a mark's right half may be empty. */
  boolean closes(int codePoint) {
    return closing.indexOf(codePoint) >= 0;
  }

  /** Returns true if a text has any of the marks. */
  boolean isIn(String text) {
    return text.codePoints().anyMatch(c -> opens(c) || closes(c));
  }
}
