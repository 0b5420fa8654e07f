package io.github.readfall.languages.reference;

import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.text.BreakIterator;
import com.ibm.icu.util.ULocale;
import io.github.readfall.type.text.Language;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Every word of a reference text as often as it occurs there, from the shortest to the longest, so
 * that lengths drawn from it are as common as in the language. Names and other words with a capital
 * are left out, except in German, where nouns have one.
 *
 * @param words sorted by length
 * @param spaced true if words are separated by spaces
 * @param meanCharacters the mean length of a word, in code points
 */
record WordPool(List<String> words, boolean spaced, double meanCharacters) {

  private static final Pattern SPACED =
      Pattern.compile(
          "(?<start>^|[.;:。।] *)?(?<![\\p{L}\\p{M}'’‐-])"
              + "(?<word>[\\p{L}\\p{M}]+(?:['’‐-][\\p{L}\\p{M}]+)*)",
          Pattern.MULTILINE);

  WordPool {
    words = List.copyOf(words);
  }

  static WordPool of(ReferenceText text) {
    Language language = text.language();
    boolean spaced = Spaces.areWritten(language);
    List<String> words = new ArrayList<>();
    for (String paragraph : text.paragraphs()) {
      words.addAll(spaced ? spaced(paragraph, language) : segmented(paragraph, language));
    }
    words.sort(Comparator.comparingInt(WordPool::characters).thenComparingLong(WordPool::lot));
    double mean = words.stream().mapToInt(WordPool::characters).average().orElse(1);
    return new WordPool(words, spaced, mean);
  }

  static int characters(String word) {
    return word.codePointCount(0, word.length());
  }

  private static long lot(String word) {
    return (long) (Scramble.of(word).share(0) * Long.MAX_VALUE);
  }

  private static List<String> spaced(String paragraph, Language language) {
    List<String> words = new ArrayList<>();
    Matcher matcher = SPACED.matcher(paragraph);
    while (matcher.find()) {
      String word = matcher.group("word");
      boolean capital = UCharacter.isUpperCase(word.codePointAt(0));
      boolean starts = matcher.group("start") != null;
      boolean german = language.locale().getLanguage().equals("de");
      if (!capital || (german && !starts)) {
        words.add(word);
      } else if (starts && !german) {
        words.add(UCharacter.toLowerCase(ULocale.forLanguageTag(language.tag()), word));
      }
    }
    return words;
  }

  private static List<String> segmented(String paragraph, Language language) {
    List<String> words = new ArrayList<>();
    BreakIterator it = BreakIterator.getWordInstance(ULocale.forLanguageTag(language.tag()));
    it.setText(paragraph);
    int start = it.first();
    for (int end = it.next(); end != BreakIterator.DONE; end = it.next()) {
      String word = paragraph.substring(start, end);
      if (word.codePoints().allMatch(c -> Character.isLetter(c) || isMark(c))) {
        words.add(word);
      }
      start = end;
    }
    return words;
  }

  private static boolean isMark(int codePoint) {
    int type = Character.getType(codePoint);
    return type == Character.NON_SPACING_MARK || type == Character.COMBINING_SPACING_MARK;
  }

  /**
   * The number of words of so many characters together, with the gaps between them; at least one.
   */
  private int wordsIn(int characters) {
    int gap = gap().length();
    return (int) Math.max(1, Math.round((characters + gap) / (meanCharacters + gap)));
  }

  /** The gap between two words. */
  String gap() {
    return spaced ? " " : "";
  }

  /** The word at a share of the way from the shortest to the longest. */
  private String at(double share) {
    return words.get((int) (share * words.size()));
  }

  /** A word of this length, or as near to it as there is; which of them, by lot. */
  String nearest(int length, double lot) {
    int best =
        words.stream().mapToInt(word -> Math.abs(characters(word) - length)).min().orElseThrow();
    List<String> nearest =
        words.stream().filter(word -> Math.abs(characters(word) - length) == best).toList();
    return nearest.get((int) (lot * nearest.size()));
  }

  /** Words that with their gaps take so many characters, as near as one word more or less can. */
  List<String> draw(int length, Scramble lot) {
    int count = wordsIn(length);
    if (count == 1) {
      return List.of(nearest(length, lot.share(0)));
    }
    List<String> words = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      words.add(at((i + lot.share(0)) / count));
    }
    List<String> fewer = fewer(lot.order(words), length);
    return evened(fewer, length - characters(String.join(gap(), fewer)), lot);
  }

  /** Leaves out words for which a long one has left no room, never the longest. */
  private List<String> fewer(List<String> words, int length) {
    List<String> kept = new ArrayList<>(words);
    int tooMany = characters(String.join(gap(), kept)) - length;
    while (tooMany > 0 && kept.size() > 1) {
      int surplus = tooMany;
      String longest = longest(kept);
      String out =
          kept.stream()
              .filter(word -> !word.equals(longest))
              .min(Comparator.comparingInt(word -> Math.abs(surplus - room(word))))
              .orElse(longest);
      if (out.equals(longest) || Math.abs(surplus - room(out)) >= surplus) {
        break;
      }
      kept.remove(out);
      tooMany -= room(out);
    }
    return kept;
  }

  private int room(String word) {
    return characters(word) + gap().length();
  }

  private static String longest(List<String> words) {
    return words.stream().max(Comparator.comparingInt(WordPool::characters)).orElseThrow();
  }

  /** The words with one of them longer or shorter, the one with which least is missing then. */
  private List<String> evened(List<String> words, int missing, Scramble lot) {
    int longest = words.indexOf(longest(words));
    List<String> best = words;
    int least = Math.abs(missing);
    for (int k = 1; k <= words.size() && least > 0; k++) {
      int i = (longest + k) % words.size(); // the longest last
      int wanted = characters(words.get(i)) + missing;
      String other = nearest(wanted, lot.share(words.size() + i));
      int left = Math.abs(wanted - characters(other));
      if (left < least) {
        best = new ArrayList<>(words);
        best.set(i, other);
        least = left;
      }
    }
    return best;
  }
}
