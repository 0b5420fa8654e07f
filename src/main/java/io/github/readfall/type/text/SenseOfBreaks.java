package io.github.readfall.type.text;

import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.lang.UScript;
import io.github.readfall.type.text.LineBreaks.Segment;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What each break of a text costs by its sense: little or less than nothing at a stop, much where
 * it parts what belongs together, and as good as banned inside a name, between a number and what it
 * counts, or after a one-letter word in languages whose typography forbids it.
 *
 * <p>Subtitling guidelines list what belongs together (BBC, Subtitle Guidelines, 3.4). The weights
 * are house defaults, chosen so that parted phrases become rare at a small cost in area.
 */
final class SenseOfBreaks {

  /** The cost of a break that surely parts what belongs together. */
  static final double PARTING = 0.37;

  /** The cost of a break in what looks like a first and a last name. */
  private static final double NAME = 0.45;

  private static final double SENTENCE_END = -0.06;
  private static final double CLAUSE_END = -0.05;

  /** How likely two ideographs side by side are one word, though a phrase ends between them. */
  private static final double COMPOUND = 0.95;

  /** Only where nothing else fits. */
  private static final double BANNED = 1;

  private static final double INSIDE_WORD = BreakCosts.NEAR_BAN;

  /** Typographers of these languages leave no one-letter word at a line's end (ČSN 01 6910). */
  private static final Set<String> NO_LETTER_AT_END = Set.of("pl", "cs", "sk", "ru", "uk");

  /** Of these, a number with a stop is the ordinal: {@code 10. Mai}. */
  private static final Set<String> WITH_ORDINAL_STOPS =
      Set.of("de", "cs", "sk", "hu", "fi", "da", "pl", "tr");

  private static final Set<String> TITLES =
      Set.of(
          "mr", "mrs", "ms", "dr", "prof", "st", "sr", "sra", "hr", "fr", "m", "mme", "mlle", "sig",
          "dott", "no", "nr");

  private static final String STOPS = ".!?…。！？؟।";
  private static final String PAUSES = ",;:—–،؛、，；：·";
  private static final String COUNTERS = "時分秒日月年週人本枚個回階歳円度番目匹点时个岁块";
  private static final String NUMERALS = "〇一二三四五六七八九十百千万亿億两兩零";

  private static final List<String> HELPING_VERBS =
      List.of("い", "ほし", "くだ", "くれ", "しま", "おい", "おく", "み", "く", "き", "あ", "も", "よ");

  private final String text;
  private final List<Segment> segments;
  private final Language language;
  private final String tongue;
  private final KeptNames names;
  private final LeaningWords leaning;
  private final List<String> words;

  SenseOfBreaks(String text, List<Segment> segments, Language language, KeptNames names) {
    this.text = text;
    this.segments = segments;
    this.language = language;
    this.tongue = language.locale().getLanguage();
    this.names = names;
    this.leaning = LeaningWords.of(language);
    this.words = IntStream.range(0, segments.size()).mapToObj(i -> lowered(i, i)).toList();
  }

  BreakCosts costs() {
    int n = segments.size();
    double[] after = new double[n];
    boolean[] endsSentence = new boolean[n];
    int[] words = new int[n];
    double[] cells = new double[n];
    boolean spaced = text.indexOf(' ') >= 0;
    for (int i = 0; i < n; i++) {
      Segment segment = segments.get(i);
      endsSentence[i] = endsSentence(i);
      words[i] = spaced && !segment.discouraged() ? 1 : 0;
      cells[i] = DisplayCells.of(text.substring(segment.start(), segment.end()));
      after[i] = i + 1 < n && !segment.forced() ? after(i) : 0;
    }
    names.partingGuessed(text, segments).forEach(i -> after[i] = Math.max(after[i], NAME));
    names.partingKnown(text, segments).forEach(i -> after[i] = BANNED);
    return new BreakCosts(after, endsSentence, words, cells);
  }

  private double after(int i) {
    Segment segment = segments.get(i);
    if (segment.discouraged()) {
      return INSIDE_WORD;
    }
    if (isQuotedWordAndParticle(i) || isCounted(i)) {
      return BANNED;
    }
    if (endsSentence(i)) {
      return SENTENCE_END;
    }
    if (isPauseAfter(i)) {
      return CLAUSE_END;
    }
    String left = wordTo(i);
    String right = wordFrom(i + 1);
    if (isBanned(i, left, right)) {
      return BANNED;
    }
    boolean oneWord = isCompound(i) || isVerbGoingOn(left, right) || isHyphenated(i);
    double likelihood = oneWord ? COMPOUND : leaning.partingAt(left, right, isStopAfter(i + 1));
    return PARTING * likelihood * StrictMath.sqrt(likelihood); // doubtful ones cost little
  }

  private boolean isBanned(int i, String left, String right) {
    boolean letterAtEnd = isLetter(left) && NO_LETTER_AT_END.contains(tongue);
    return letterAtEnd
        || shortens(i, left)
        || (isNumber(left) && !right.isEmpty() && !(isYear(left) && leaning.leansOnNext(right)))
        || isHonorific(left);
  }

  /** {@code お|ばあちゃん}, {@code 昨日ご|飯}: the prefix belongs to what follows. */
  private static boolean isHonorific(String left) {
    int last = left.length() - 1;
    return last >= 0
        && "おご".indexOf(left.charAt(last)) >= 0
        && (last == 0 || UScript.getScript(left.charAt(last - 1)) != UScript.HIRAGANA);
  }

  private static boolean isLetter(String word) {
    return word.length() == 1 && Character.isLetter(word.charAt(0));
  }

  /** Returns true if the stop after a word shortens it: a title, an initial, an ordinal number. */
  private boolean shortens(int i, String left) {
    boolean initial = isLetter(left) && !(left.equals("i") && tongue.equals("en"));
    boolean ordinal = left.length() <= 2 && isNumber(left) && WITH_ORDINAL_STOPS.contains(tongue);
    return endsWith(i, ".") && !endsWith(i, "..") && (TITLES.contains(left) || initial || ordinal);
  }

  private boolean endsWith(int i, String sign) {
    Segment segment = segments.get(i);
    return text.substring(segment.start(), segment.end()).stripTrailing().endsWith(sign);
  }

  private boolean isStopAfter(int i) {
    return endsSentence(i) || isPauseAfter(i) || i + 1 == segments.size();
  }

  private boolean isPauseAfter(int i) {
    return PAUSES.indexOf(lastSign(i)) >= 0;
  }

  /** A number, alone or after a prefix with a hyphen: {@code 8}, {@code כ-30}. */
  private static boolean isNumber(String word) {
    int hyphen = Math.max(word.lastIndexOf('-'), word.lastIndexOf('\u05BE'));
    String digits = word.substring(hyphen + 1);
    return !digits.isEmpty()
        && digits.chars().allMatch(c -> Character.isDigit(c) || ".,:".indexOf(c) >= 0);
  }

  private static boolean isYear(String number) {
    return number.length() == 4 && number.chars().allMatch(Character::isDigit);
  }

  /** Hangul after a closing quote without a space is a particle of what is quoted. */
  private boolean isQuotedWordAndParticle(int i) {
    int at = segments.get(i).end();
    char before = text.charAt(at - 1);
    return "”’\"'」』".indexOf(before) >= 0
        && UScript.getScript(text.codePointAt(at)) == UScript.HANGUL;
  }

  private boolean isCounted(int i) {
    int at = segments.get(i).end();
    char before = text.charAt(at - 1);
    char after = text.charAt(at);
    boolean number = NUMERALS.indexOf(before) >= 0 || Character.isDigit(before);
    boolean counted = COUNTERS.indexOf(after) >= 0 || NUMERALS.indexOf(after) >= 0;
    return (number && counted) || (before == '第' && NUMERALS.indexOf(after) >= 0);
  }

  /** A phrase in Japanese ends in kana: where ideographs or katakana meet ideographs, none does. */
  private boolean isCompound(int i) {
    if (!language.script().equals("Jpan")) {
      return false;
    }
    int at = segments.get(i).end();
    int before = UScript.getScript(text.codePointBefore(at));
    return UScript.getScript(text.codePointAt(at)) == UScript.HAN
        && (before == UScript.HAN || before == UScript.KATAKANA);
  }

  private boolean isHyphenated(int i) {
    return "-\u2010・".indexOf(text.charAt(segments.get(i).end() - 1)) >= 0;
  }

  /** A verb's form in て goes on in a helping verb. */
  private boolean isVerbGoingOn(String left, String right) {
    return language.script().equals("Jpan")
        && (left.endsWith("て") || left.endsWith("で"))
        && HELPING_VERBS.stream().anyMatch(right::startsWith);
  }

  private boolean endsSentence(int i) {
    return STOPS.indexOf(lastSign(i)) >= 0 && !(lastSign(i) == '.' && shortens(i, wordTo(i)));
  }

  /** The last character of a segment that is neither space nor closing quote nor bracket. */
  private char lastSign(int i) {
    Segment segment = segments.get(i);
    for (int at = segment.end() - 1; at >= segment.start(); at--) {
      char c = text.charAt(at);
      int type = UCharacter.getType(c);
      boolean closes =
          type == Character.END_PUNCTUATION
              || type == Character.FINAL_QUOTE_PUNCTUATION
              || c == '"'
              || c == '\'';
      if (!closes && !UCharacter.isUWhiteSpace(c)) {
        return c;
      }
    }
    return ' ';
  }

  /**
   * The word that ends with a segment, all of it if the segment is only its end; in small letters.
   */
  private String wordTo(int i) {
    int first = i;
    while (first > 0 && segments.get(first - 1).discouraged()) {
      first--;
    }
    return word(first, i);
  }

  private String wordFrom(int i) {
    int last = i;
    while (last + 1 < segments.size() && segments.get(last).discouraged()) {
      last++;
    }
    return word(i, last);
  }

  private String word(int first, int last) {
    return first == last ? words.get(first) : lowered(first, last);
  }

  private String lowered(int first, int last) {
    String whole = text.substring(segments.get(first).start(), segments.get(last).end());
    return leaning.lowered(letters(whole));
  }

  private static String letters(String word) {
    int from = 0;
    int to = word.length();
    while (from < to && !isPart(word.charAt(from))) {
      from++;
    }
    while (to > from && !isPart(word.charAt(to - 1))) {
      to--;
    }
    return word.substring(from, to);
  }

  private static boolean isPart(char c) {
    int type = UCharacter.getType(c);
    return Character.isLetterOrDigit(c)
        || type == Character.NON_SPACING_MARK
        || type == Character.COMBINING_SPACING_MARK;
  }
}
