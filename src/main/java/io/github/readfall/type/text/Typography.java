package io.github.readfall.type.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.function.IntUnaryOperator;
import java.util.regex.Pattern;

/**
 * Text with the quotes, apostrophes, ellipses and dashes that its language prints in place of those
 * of a keyboard.
 *
 * @param text as lettered, not yet in capitals
 * @param placeOf maps a UTF-16 index of the original text to the lettered one
 */
public record Typography(String text, IntUnaryOperator placeOf) {

  private static final String ELLIPSIS = "…";
  private static final String STOPS = "...";
  private static final int STOPS_AND_FULL_STOP = 4;
  private static final Pattern TYPED_STOPS = Pattern.compile("(?<!\\.)\\.{3,}");

  /** A dash between words, however it was typed; between digits an en dash is a range. */
  private static final Pattern DASH = Pattern.compile("(?<!-)-{2,3}(?!-)|[—―]+|(?<= )–(?= )");

  static Typography unchanged(String text) {
    return new Typography(text, i -> i);
  }

  /**
   * Letters quotes, apostrophes and ellipses as the language prints them. Curly quotes stay as they
   * were typed.
   *
   * @param has true for a character of the faces; others are not put in
   */
  public static Typography printed(String text, Language language, IntPredicate has) {
    List<Replacement> replacements = new ArrayList<>(Quotes.in(text, language, has));
    if (has.test(ELLIPSIS.charAt(0))) {
      replacements.addAll(ellipses(text));
    } else {
      replacements.addAll(all(Pattern.compile(ELLIPSIS), text, STOPS));
    }
    return Replacement.in(text, replacements);
  }

  private static List<Replacement> ellipses(String text) {
    return TYPED_STOPS
        .matcher(text)
        .results()
        .filter(
            stops -> stops.group().length() % STOPS.length() == 0 || isSentenceEnd(stops.group()))
        .map(
            stops ->
                new Replacement(
                    stops.start(),
                    stops.end() - stops.group().length() % STOPS.length(),
                    ELLIPSIS.repeat(stops.group().length() / STOPS.length())))
        .toList();
  }

  /** Three stops and the full stop of the sentence. */
  private static boolean isSentenceEnd(String stops) {
    return stops.length() == STOPS_AND_FULL_STOP;
  }

  /**
   * Letters every dash between words in one form. Chinese and Japanese have a dash of their own,
   * two squares long, which stays.
   *
   * @param form of all dashes; empty to leave them as written
   */
  public static Typography dashed(
      String text, Language language, Optional<String> form, IntPredicate has) {
    return form.filter(dash -> language.hasCapitals() && dash.codePoints().allMatch(has))
        .map(dash -> Replacement.in(text, all(DASH, text, dash)))
        .orElseGet(() -> unchanged(text));
  }

  private static List<Replacement> all(Pattern found, String text, String with) {
    return found
        .matcher(text)
        .results()
        .filter(stretch -> !stretch.group().equals(with))
        .map(stretch -> new Replacement(stretch.start(), stretch.end(), with))
        .toList();
  }
}
