package io.github.readfall.type.text;

import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.text.Normalizer2;
import com.ibm.icu.util.ULocale;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The words of a language that lean on a neighbour, and how likely it is that a line break between
 * two words parts what belongs together.
 *
 * <p>For each word the table says how often a break on its leaning side does so. The two sides of a
 * gap are independent hints: their log-odds are added, less those of a gap of which nothing is
 * known.
 */
final class LeaningWords {

  private static final String TABLE = "leaning-words.tsv";

  /** Shares for the strengths 1 to 3 of the table. House defaults, after counts in treebanks. */
  private static final List<Double> SHARES = List.of(0.57, 0.75, 0.95);

  /** Of gaps of which nothing is known: nearly half part something, most by a word of the table. */
  private static final double BASE = 0.42;

  /** After a word that is not in the table, if its language has no row of its own for it. */
  private static final double PLAIN_WORD = 0.2;

  /** Before a word that leans on the next one: a line may well begin with it. */
  private static final double LINE_BEGINNER = 0.12;

  /** The same, if the word before it leans on the next one too. */
  private static final double LINE_BEGINNER_AFTER_LEANING = 0.2;

  /** Inside a word that is written with a space. */
  private static final double PAIR = 0.98;

  private static final int ASCII = 128;

  /** Languages in which small letters are others than in English. */
  private static final Set<String> OF_THEIR_OWN = Set.of("tr", "az", "lt");

  private static final Map<String, LeaningWords> ALL = read();
  private static final LeaningWords NONE = new LeaningWords(ULocale.ROOT, List.of());

  private final ULocale locale;
  private final boolean isUsual;
  private final boolean isAccented;
  private final double plainWord;
  private final Map<String, Double> next = new HashMap<>();
  private final Map<String, Double> before = new HashMap<>();
  private final Set<String> pairs = new HashSet<>();

  private LeaningWords(ULocale locale, List<String[]> rows) {
    this.locale = locale;
    this.isUsual = !OF_THEIR_OWN.contains(locale.getLanguage());
    this.isAccented = !locale.getLanguage().equals("el"); // Greek capitals have no accents
    this.plainWord =
        rows.stream()
            .filter(LeaningWords::isPlain)
            .mapToDouble(row -> Integer.parseInt(row[2]) / 100.0)
            .findFirst()
            .orElse(PLAIN_WORD);
    rows.stream().filter(row -> !isPlain(row)).forEach(this::add);
  }

  private static boolean isPlain(String[] row) {
    return row[1].equals("plain");
  }

  /** The words of a language; none if the table has no row for it. */
  static LeaningWords of(Language language) {
    String tag = language.tag();
    LeaningWords whole = ALL.get(tag);
    int dash = tag.indexOf('-');
    return whole != null ? whole : ALL.getOrDefault(dash < 0 ? tag : tag.substring(0, dash), NONE);
  }

  private static Map<String, LeaningWords> read() {
    Map<String, List<String[]>> rows;
    InputStream table = Objects.requireNonNull(LeaningWords.class.getResourceAsStream(TABLE));
    try (BufferedReader lines =
        new BufferedReader(new InputStreamReader(table, StandardCharsets.UTF_8))) {
      rows =
          lines
              .lines()
              .filter(line -> !line.startsWith("#"))
              .map(line -> line.split("\t", -1))
              .collect(Collectors.groupingBy(row -> row[0]));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Map<String, LeaningWords> all = new HashMap<>();
    rows.forEach((tag, own) -> all.put(tag, new LeaningWords(ULocale.forLanguageTag(tag), own)));
    return Map.copyOf(all);
  }

  private void add(String[] row) {
    if (row[1].equals("pair")) {
      List.of(row[3].split(" ", -1)).forEach(pair -> pairs.add(pair.replace('_', ' ')));
      return;
    }
    Map<String, Double> words = row[1].equals("next") ? next : before;
    double share = SHARES.get(Integer.parseInt(row[2]) - 1);
    for (String word : row[3].split(" ", -1)) {
      words.putIfAbsent(isAccented ? word : unaccented(word), share);
    }
  }

  /** A word as the table has it: in small letters by the language's own rules. */
  String lowered(String word) {
    if (isUsual && word.chars().allMatch(c -> c < ASCII)) {
      return word.toLowerCase(Locale.ROOT);
    }
    String lower = UCharacter.toLowerCase(locale, word).replace('\u2019', '\'');
    return isAccented ? lower : unaccented(lower);
  }

  private static String unaccented(String word) {
    StringBuilder bare = new StringBuilder();
    Normalizer2.getNFDInstance()
        .normalize(word)
        .codePoints()
        .filter(c -> UCharacter.getType(c) != Character.NON_SPACING_MARK)
        .forEach(bare::appendCodePoint);
    return bare.toString().replace('ς', 'σ');
  }

  /** Returns true if a word leans on the one after it. */
  boolean leansOnNext(String word) {
    return next.containsKey(word);
  }

  /**
   * The likelihood that a break parts what belongs together, from 0 to 1.
   *
   * @param left the word before the break, {@link #lowered}
   * @param right the word after it
   * @param rightStops whether a stop follows the right word, so that it leans on nothing after it
   */
  double partingAt(String left, String right, boolean rightStops) {
    if (!pairs.isEmpty() && pairs.contains(left + ' ' + right)) {
      return PAIR;
    }
    double leftShare = next.getOrDefault(left, plainWord);
    double odds = logOdds(leftShare) + logOdds(rightShare(left, right, rightStops)) - logOdds(BASE);
    return 1 / (1 + StrictMath.exp(-odds));
  }

  /**
   * The share of the word after a break. What leans on the next word begins a line well, unless it
   * goes on from a leaning word ({@code might be}); a particle of a verb that may be a preposition
   * as well is one at the end of its clause.
   */
  private double rightShare(String left, String right, boolean rightStops) {
    if (!next.containsKey(right) || rightStops) {
      return before.getOrDefault(right, BASE);
    }
    return next.containsKey(left)
        ? before.getOrDefault(right, LINE_BEGINNER_AFTER_LEANING)
        : LINE_BEGINNER;
  }

  private static double logOdds(double share) {
    return StrictMath.log(share / (1 - share));
  }
}
