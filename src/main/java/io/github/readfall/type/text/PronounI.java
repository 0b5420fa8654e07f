package io.github.readfall.type.text;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Finds the English pronoun I, which has bars in lettering in capitals, so that it is not taken for
 * a stroke or an l; every other I is plain (E. J. Waterman, "General Tips", on lettering).
 */
public final class PronounI {

  /** Alone, or shortened with am, will, had and have; not an initial, a numeral or a stutter. */
  private static final Pattern PRONOUN =
      Pattern.compile(
          "(?<![\\p{L}\\p{M}\\p{N}/&.'’])[Ii](?![\\p{L}\\p{M}\\p{N}/&])(?!\\.\\p{L})(?!\\."
              + " ?\\p{Lu}\\.)(?!-(?![Ii](?!\\p{L}))\\p{L})"
              + "(?!['’](?!(?i:m|ll|d|ve)(?![\\p{L}\\p{M}]))\\p{L})");

  /** A word that a numeral follows: {@code Part I}, {@code King Charles I}. */
  private static final Pattern NUMBERED =
      Pattern.compile(
          "(?i:\\b(?:part|chapter|act|volume|book|phase|mark|war|no\\.)"
              + "|\\b(?:king|queen|pope|emperor|empress|tsar|sultan) \\p{L}+) $");

  /** A name inside a sentence, after which it may be either. */
  private static final Pattern NAMED =
      Pattern.compile("[^.?!…\\n\"“] ?\\b(?!I\\b)\\p{Lu}\\p{Ll}+ $");

  private PronounI() {}

  /** The places of the pronoun in a text that is not yet in capitals, if it is English. */
  public static List<Integer> in(String text, Language language) {
    if (!language.locale().getLanguage().equals("en")) {
      return List.of();
    }
    return PRONOUN
        .matcher(text)
        .results()
        .map(MatchResult::start)
        .filter(i -> !isNumeral(text, i))
        .toList();
  }

  /** {@code Charles I.} has a numeral, {@code ask Mara I said} has none: a verb follows it. */
  private static boolean isNumeral(String text, int i) {
    String before = text.substring(Math.max(0, i - 32), i);
    boolean said = i + 2 < text.length() && Character.isLetter(text.charAt(i + 2));
    boolean shortened = i + 1 < text.length() && "'’".indexOf(text.charAt(i + 1)) >= 0;
    return NUMBERED.matcher(before).find() || (!said && !shortened && NAMED.matcher(before).find());
  }
}
