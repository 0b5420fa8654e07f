package io.github.readfall.type.text;

import com.ibm.icu.text.BreakIterator;
import java.util.Locale;
import java.util.Optional;

/** Finds where a speech may be parted in two. */
public final class SentenceEnds {

  private static final int SHOWN_LETTERS = 24;

  private SentenceEnds() {}

  /**
   * The last words of the sentence that ends nearest to the middle of a text (Unicode Standard
   * Annex 29, sentence boundaries); empty if it is one sentence.
   */
  public static Optional<String> nearestToTheMiddle(String text, Locale locale) {
    BreakIterator sentences = BreakIterator.getSentenceInstance(locale);
    sentences.setText(text);
    int best = 0;
    sentences.first();
    for (int end = sentences.next(); end != BreakIterator.DONE; end = sentences.next()) {
      boolean nearer = Math.abs(2 * end - text.length()) < Math.abs(2 * best - text.length());
      best = end < text.length() && nearer ? end : best;
    }
    return best == 0 ? Optional.empty() : Optional.of(lastWords(text.substring(0, best).strip()));
  }

  private static String lastWords(String text) {
    String line = text.replace('\n', ' ');
    if (line.length() <= SHOWN_LETTERS) {
      return line;
    }
    int word = line.indexOf(' ', line.length() - SHOWN_LETTERS);
    return "…" + line.substring(word < 0 ? line.length() - SHOWN_LETTERS : word + 1);
  }
}
