package io.github.readfall.type.text;

import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.text.BreakIterator;
import com.ibm.icu.util.ULocale;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Finds the places where a line may end: UAX #14 by ICU for the text's language, without those that
 * lettering never uses.
 *
 * <p>Never, in any language: a line that starts with a dash, an ellipsis, a danda or a sign that
 * repeats the word before, a dialogue dash alone at a line's end, a stump of a hyphenated word
 * ({@code now-ish, w-wait}), a break inside a grapheme cluster.
 *
 * <p>Safe to share between threads: each call works on its own clone of ICU's iterator, which by
 * itself is not.
 */
public final class LineBreaks {

  private static final int HARD_BREAK_STATUS = 100; // ICU: UBRK_LINE_HARD and above
  private static final char FIRST_COMBINING = '\u0300'; // all before it are clusters by themselves

  private static final String CLUSTERS = "clusters";
  private static final String WORDS = "words of ";

  private final Map<String, BreakIterator> prototypes = new ConcurrentHashMap<>();

  /**
   * A stretch that no line may break.
   *
   * @param start first UTF-16 unit
   * @param end one past the last, trailing spaces included
   * @param forced whether the line must end here
   * @param discouraged whether a line should rather not end here: inside a phrase or a word
   */
  public record Segment(int start, int end, boolean forced, boolean discouraged) {

    /** This segment, ending the way another does. */
    Segment withEndOf(Segment other) {
      return new Segment(start, end, other.forced, other.discouraged);
    }
  }

  /**
   * Cuts a text into unbreakable segments.
   *
   * @param text with {@code '\n'} for a forced break
   * @param language whose rules apply
   * @return in order, covering the text; empty for an empty text
   */
  public List<Segment> segments(String text, Language language) {
    BitSet discouraged = opportunities(text, language.breaking().looseTag());
    BitSet breaks = preferred(text, language, discouraged);
    return cut(text, language.breaking().byWord() ? discouraged : breaks, breaks);
  }

  /** Those of the breaks at which a phrase or a word ends. */
  private BitSet preferred(String text, Language language, BitSet all) {
    Breaking breaking = language.breaking();
    if (breaking.byWord()) {
      return among(all, boundaries(text, WORDS + breaking.tag()));
    }
    if (breaking.tag().equals(breaking.looseTag())) {
      return all;
    }
    BitSet phrases = among(all, opportunities(text, breaking.tag()));
    phrases.stream().filter(at -> BreakFilter.tearsSound(text, at)).forEach(phrases::clear);
    return phrases;
  }

  private static BitSet among(BitSet all, BitSet some) {
    BitSet both = (BitSet) all.clone(); // phrases alone would let small kana start a line
    both.and(some);
    return both;
  }

  /**
   * Cuts more finely, for a text of which one segment is wider than its balloon: inside phrases
   * too, which the segments then say.
   */
  public List<Segment> looseSegments(String text, Language language) {
    BitSet loose = opportunities(text, language.breaking().looseTag());
    return cut(text, loose, preferred(text, language, loose));
  }

  /** Cuts at every grapheme cluster (UAX #29): the last resort for one endless word. */
  public List<Segment> clusters(String text) {
    return cut(text, clusterEnds(text), new BitSet());
  }

  private BitSet clusterEnds(String text) {
    return boundaries(text, CLUSTERS);
  }

  private BitSet boundaries(String text, String kind) {
    BreakIterator it = iterator(kind);
    it.setText(text);
    BitSet ends = new BitSet(text.length() + 1);
    for (int at = it.next(); at != BreakIterator.DONE; at = it.next()) {
      ends.set(at);
    }
    return ends;
  }

  private BitSet opportunities(String text, String tag) {
    BreakIterator it = iterator(tag);
    it.setText(text);
    BitSet breaks = new BitSet(text.length() + 1);
    for (int at = it.next(); at != BreakIterator.DONE; at = it.next()) {
      if (at == text.length()
          || it.getRuleStatus() >= HARD_BREAK_STATUS
          || BreakFilter.allows(text, at)) {
        breaks.set(at);
      }
    }
    if (text.chars().anyMatch(c -> c >= FIRST_COMBINING)) {
      breaks.and(clusterEnds(text)); // UAX #14 lets a mark be torn from a space before it
    }
    return breaks;
  }

  private BreakIterator iterator(String tag) {
    BreakIterator prototype = prototypes.computeIfAbsent(tag, LineBreaks::create);
    return prototype.clone();
  }

  private static BreakIterator create(String tag) {
    if (tag.equals(CLUSTERS)) {
      return BreakIterator.getCharacterInstance(ULocale.ROOT);
    }
    return tag.startsWith(WORDS)
        ? BreakIterator.getWordInstance(ULocale.forLanguageTag(tag.substring(WORDS.length())))
        : BreakIterator.getLineInstance(ULocale.forLanguageTag(tag));
  }

  private static List<Segment> cut(String text, BitSet breaks, BitSet preferred) {
    List<Segment> segments = new ArrayList<>();
    int start = 0;
    for (int end = breaks.nextSetBit(1); end >= 0; end = breaks.nextSetBit(end + 1)) {
      boolean forced = text.charAt(end - 1) == '\n';
      boolean last = end == text.length();
      segments.add(
          new Segment(start, end, forced && !last, !forced && !last && !preferred.get(end)));
      start = end;
    }
    return List.copyOf(segments);
  }

  /** The end of the letters of a segment: before its trailing spaces and its forced break. */
  static int contentEnd(String text, int start, int end) {
    int at = end;
    while (at > start && isTrailing(text.charAt(at - 1))) {
      at--;
    }
    return at;
  }

  private static boolean isTrailing(char c) {
    return c == ' ' || c == '\n' || c == '\u200B' || UCharacter.isWhitespace(c);
  }
}
