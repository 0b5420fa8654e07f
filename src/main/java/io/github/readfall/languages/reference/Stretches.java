package io.github.readfall.languages.reference;

import com.ibm.icu.text.BreakIterator;
import com.ibm.icu.util.ULocale;
import java.util.ArrayList;
import java.util.List;

/**
 * Stretches of a reference text that start at words, evenly spread over it; at the text's end they
 * continue at its beginning.
 *
 * @param round the text twice
 * @param starts of the stretches, UTF-16 units
 */
record Stretches(String round, List<Integer> starts) {

  Stretches {
    starts = List.copyOf(starts);
  }

  /**
   * A number of stretches.
   *
   * @param phase start between two even places, 0 to 1
   */
  static Stretches of(ReferenceText text, int count, double phase) {
    String glue = Spaces.betweenSentences(text.language());
    String once = String.join(glue, text.paragraphs());
    BreakIterator words =
        BreakIterator.getWordInstance(ULocale.forLanguageTag(text.language().tag()));
    words.setText(once);
    List<Integer> starts = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      starts.add(wordFrom(once, (int) ((i + phase) * once.length() / count), words));
    }
    return new Stretches(once + glue + once, starts);
  }

  /** The next start of a word; the text's if there is none. */
  private static int wordFrom(String text, int from, BreakIterator words) {
    int at = from == 0 ? 0 : words.following(from - 1);
    while (at != BreakIterator.DONE && at < text.length()) {
      if (Character.isLetter(text.codePointAt(at))) {
        return at;
      }
      at = words.next();
    }
    return 0;
  }

  /** Each stretch, cut off after so many code points. */
  List<String> ofLength(int characters) {
    return starts.stream().map(start -> from(start, characters)).toList();
  }

  private String from(int start, int characters) {
    int rest = round.codePointCount(start, round.length());
    return round
        .substring(start, round.offsetByCodePoints(start, Math.min(characters, rest)))
        .strip();
  }
}
