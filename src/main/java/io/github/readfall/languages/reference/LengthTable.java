package io.github.readfall.languages.reference;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Published tables of how much longer the translation of an English text is. If a row is a range,
 * its upper end is the one to plan with; lengths are rounded up, since room is kept for them.
 */
public enum LengthTable {

  /**
   * W3C Internationalization, "Text size in translation" (R. Ishida, 2007, revised 2016), after
   * IBM's guidelines: the whole length, not the increase. Its row of 51 to 70 characters is higher
   * than the one before, as published.
   */
  W3C,

  /**
   * Embarcadero RAD Studio documentation, "Text": the increase, here added to the source. It gives
   * no least length, so that is the same.
   */
  EMBARCADERO;

  private static final List<Row> W3C_ROWS =
      List.of(
          new Row(10, 200, 300),
          new Row(20, 180, 200),
          new Row(30, 160, 180),
          new Row(50, 140, 160),
          new Row(70, 151, 170),
          new Row(Integer.MAX_VALUE, 130, 130));

  private static final List<Row> EMBARCADERO_ROWS =
      List.of(
          new Row(5, 200, 200),
          new Row(12, 180, 180),
          new Row(20, 160, 160),
          new Row(30, 140, 140),
          new Row(50, 120, 120),
          new Row(Integer.MAX_VALUE, 110, 110));

  private static final long PERCENT = 100;

  /**
   * A row.
   *
   * @param upTo the longest source that it is for, in characters
   * @param leastPercent target over source
   * @param mostPercent target over source
   */
  private record Row(int upTo, int leastPercent, int mostPercent) {}

  private List<Row> rows() {
    return switch (this) {
      case W3C -> W3C_ROWS;
      case EMBARCADERO -> EMBARCADERO_ROWS;
    };
  }

  /**
   * The expected length of a text by the table.
   *
   * @param sourceCharacters of the English text; positive
   */
  Expectation of(int sourceCharacters) {
    Row row = rows().stream().filter(r -> sourceCharacters <= r.upTo()).findFirst().orElseThrow();
    int most = share(sourceCharacters, row.mostPercent());
    return new Expectation(share(sourceCharacters, row.leastPercent()), most, most);
  }

  private static int share(int characters, int percent) {
    return (int) Math.min(Integer.MAX_VALUE, (characters * (long) percent + PERCENT - 1) / PERCENT);
  }

  /** The word a person asks for it by. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The table with this word. */
  public static Optional<LengthTable> of(String word) {
    return Arrays.stream(values()).filter(table -> table.word().equals(word)).findFirst();
  }
}
