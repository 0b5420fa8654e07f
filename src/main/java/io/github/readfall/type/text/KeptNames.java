package io.github.readfall.type.text;

import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.util.ULocale;
import io.github.readfall.type.text.LineBreaks.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Names of more than one word that lines should not part.
 *
 * @param known as they are written, e.g. {@code Old Wouter}
 * @param guessed words that look like a first and a last name
 */
public record KeptNames(List<String> known, List<String> guessed) {

  /** None. */
  public static final KeptNames NONE = new KeptNames(List.of(), List.of());

  /** Two words with a capital each, the second not at the start of a sentence. */
  private static final Pattern TWO_CAPITALS =
      Pattern.compile("(?<![\\p{L}\\p{M}'’])(?=(\\p{Lu}[\\p{Ll}\\p{M}]+ \\p{Lu}[\\p{L}\\p{M}]+))");

  public KeptNames {
    known = folded(known);
    guessed = folded(guessed);
  }

  private static List<String> folded(List<String> names) {
    return names.stream()
        .filter(name -> name.indexOf(' ') > 0)
        .map(name -> folded(name).strip())
        .filter(name -> name.indexOf(' ') > 0)
        .distinct()
        .toList();
  }

  private static String folded(String text) {
    String lower = UCharacter.toLowerCase(ULocale.ROOT, text);
    return lower.length() == text.length() ? lower : text;
  }

  /**
   * The names in a text as it is written.
   *
   * @param cast names that are known
   * @param text not in capitals, so that names can be told by theirs
   * @param language German writes every noun with a capital, so nothing is guessed there
   */
  public static KeptNames in(List<String> cast, String text, Language language) {
    boolean isTold = !language.locale().getLanguage().equals("de");
    Stream<String> pairs =
        isTold ? TWO_CAPITALS.matcher(text).results().map(pair -> pair.group(1)) : Stream.empty();
    return new KeptNames(cast, pairs.toList());
  }

  /** The segments after which a break would part a known name. */
  List<Integer> partingKnown(String text, List<Segment> segments) {
    return parting(known, text, segments);
  }

  /** The segments after which a break would part a name that is guessed. */
  List<Integer> partingGuessed(String text, List<Segment> segments) {
    return parting(guessed, text, segments);
  }

  private static List<Integer> parting(List<String> names, String text, List<Segment> segments) {
    List<Integer> parted = new ArrayList<>();
    String folded = names.isEmpty() ? "" : folded(text);
    for (String name : names) {
      Matcher found = Pattern.compile(Pattern.quote(name)).matcher(folded);
      while (found.find()) {
        for (int i = 0; i < segments.size(); i++) {
          int gap = segments.get(i).end();
          if (gap > found.start() && gap < found.end()) {
            parted.add(i);
          }
        }
      }
    }
    return parted;
  }
}
