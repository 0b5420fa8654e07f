package io.github.readfall.plan;

import io.github.readfall.script.CueText;
import io.github.readfall.type.text.Language;
import java.util.Map;
import java.util.Set;

/**
 * The speed at which a language is read silently.
 *
 * <p>The figures of a language are those of IReST, read aloud by people of 18 to 35
 * (Trauzettel-Klosinski and Dietz 2012, Investigative Ophthalmology and Visual Science
 * 53(9):5452-5461; the table was taken from two secondary pages that quote it, the means over all
 * languages from its abstract). They are scaled to silent reading by the one language for which
 * both are known: English fiction is read silently at 260 words a minute (Brysbaert 2019, Journal
 * of Memory and Language 109:104047), IReST's English aloud at 228.
 *
 * @param perMinute words or characters in a minute; positive
 * @param byCharacters true if it counts characters, all but white space; else words
 */
public record ReadingSpeed(double perMinute, boolean byCharacters) {

  /**
   * The least time for a word, in seconds: the time that subtitles are held (BBC Subtitle
   * Guidelines, 4.1). Balloons are read like subtitles, a few words at a time with a picture
   * between, so no balloon counts as read faster.
   */
  public static final double LEAST_PER_WORD_S = 0.3;

  private static final double SILENT = 260.0 / 228;
  private static final double SECONDS = 60;

  /** Words in a minute, read aloud. */
  private static final Map<String, Integer> WORDS =
      Map.ofEntries(
          Map.entry("ar", 138),
          Map.entry("de", 179),
          Map.entry("en", 228),
          Map.entry("es", 218),
          Map.entry("fi", 161),
          Map.entry("fr", 195),
          Map.entry("he", 187),
          Map.entry("it", 188),
          Map.entry("nl", 202),
          Map.entry("pl", 166),
          Map.entry("pt", 181),
          Map.entry("ru", 184),
          Map.entry("sl", 180),
          Map.entry("sv", 199),
          Map.entry("tr", 166));

  /** Characters in a minute, read aloud, of languages that are written without spaces. */
  private static final Map<String, Integer> CHARACTERS = Map.of("zh", 255, "ja", 357);

  /** Languages without spaces that IReST does not have. */
  private static final Set<String> UNSPACED = Set.of("th", "lo", "km", "my");

  /** The mean of IReST's 17 languages, for one that it does not have. A house default. */
  private static final int MEAN_WORDS = 184;

  private static final int MEAN_CHARACTERS = 863;

  public ReadingSpeed {
    if (!(perMinute > 0)) {
      throw new IllegalArgumentException("nobody reads " + perMinute + " a minute");
    }
  }

  /** The speed of a language, in any region. */
  public static ReadingSpeed of(Language language) {
    String tag = language.locale().getLanguage();
    if (CHARACTERS.containsKey(tag) || UNSPACED.contains(tag)) {
      return new ReadingSpeed(CHARACTERS.getOrDefault(tag, MEAN_CHARACTERS) * SILENT, true);
    }
    return new ReadingSpeed(WORDS.getOrDefault(tag, MEAN_WORDS) * SILENT, false);
  }

  /** The time to read a balloon with this text, in seconds. */
  public double seconds(CueText text) {
    int words = WordCount.of(text);
    double read = seconds(byCharacters ? characters(text) : words, perMinute);
    return Math.max(read, LEAST_PER_WORD_S * words);
  }

  /** The time to read a number of words or characters, in seconds. */
  static double seconds(double count, double perMinute) {
    return count * SECONDS / perMinute;
  }

  private static double characters(CueText text) {
    return text.plain().codePoints().filter(c -> !Character.isWhitespace(c)).count();
  }
}
