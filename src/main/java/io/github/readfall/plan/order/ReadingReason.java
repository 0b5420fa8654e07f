package io.github.readfall.plan.order;

import io.github.readfall.base.finding.Phrase;
import io.github.readfall.lettering.style.ReadingSide;

/** The reason why one of two elements is read before the other. */
public enum ReadingReason {
  /** It begins clearly higher. */
  HIGHER,
  /** It begins a little higher, on the leading side or in the same column. */
  A_LITTLE_HIGHER,
  /** It begins a little higher, but on the trailing side: some readers take the other first. */
  HIGHER_BUT_TRAILING,
  /** Both begin level, and it is on the leading side. */
  LEADING,
  /** Both begin level in one column, so that neither leads: some take the other first. */
  SAME_COLUMN,
  /** Its panel and the other's are a row, and it is on the leading side. */
  ROW,
  /** Its panel is beside the other's in another row, and begins higher. */
  STAGGERED,
  /** Its column is apart from the other's and leads: some read across instead. */
  COLUMN,
  /** One panel is inside the other: either may be read first. */
  NESTED;

  /** Returns true if readers are known, or bound, to differ. */
  public boolean readersDiffer() {
    return this == HIGHER_BUT_TRAILING || this == SAME_COLUMN || this == COLUMN;
  }

  /**
   * Returns true if it holds for every reader, whatever is around: such pairs never form a circle.
   */
  boolean isCertain() {
    return this == HIGHER;
  }

  /**
   * Half a sentence, e.g. {@code A begins higher, so it is read first}.
   *
   * @param met the name of the element read first
   */
  public Phrase sentence(Phrase met, ReadingSide side) {
    String from = "read from the " + (side == ReadingSide.LTR ? "left" : "right");
    Phrase first = Phrase.of(", so ").then(met).then(" is read first");
    return switch (this) {
      case HIGHER, A_LITTLE_HIGHER, HIGHER_BUT_TRAILING ->
          met.then(" begins higher, so it is read first");
      case LEADING ->
          Phrase.of("both begin at the same height and the strip is " + from).then(first);
      case SAME_COLUMN ->
          Phrase.of("both begin at the same height in one column, and neither leads");
      case ROW -> Phrase.of("the panels are in a row " + from).then(first);
      case STAGGERED -> met.then(" is in the panel that begins higher, so it is read first");
      case COLUMN -> Phrase.of("the columns are far apart and " + from).then(first);
      case NESTED -> Phrase.of("one panel is inside the other, and either may be read first");
    };
  }
}
