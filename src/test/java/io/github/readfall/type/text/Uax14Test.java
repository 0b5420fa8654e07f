package io.github.readfall.type.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.lang.UProperty;
import com.ibm.icu.text.BreakIterator;
import com.ibm.icu.util.ULocale;
import io.github.readfall.type.font.Corpus;
import io.github.readfall.type.text.BreakSamples.Sample;
import java.io.IOException;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Breaks against the Unicode Character Database's own samples, LineBreakTest.txt and
 * GraphemeBreakTest.txt 15.0 (https://www.unicode.org/Public/15.0.0/ucd/auxiliary/). ICU4J 78.1
 * knows Unicode 17, whose rules differ; each difference is explained here, or the test fails.
 */
class Uax14Test {

  private static final int LINE_SAMPLES = 7654;
  private static final int GRAPHEME_SAMPLES = 602;

  /** Why ICU4J 78.1 departs from Unicode 15.0 at a place. */
  private enum Departure {
    /** LB 20a, since Unicode 16: a hyphen that starts a word stays with it. */
    WORD_INITIAL_HYPHEN,
    /** LB 25, since Unicode 16: a point or comma before a digit starts its number. */
    POINT_BEFORE_DIGIT,
    /** LB 15, since Unicode 16, asks whether a quote opens or closes. */
    QUOTE_AND_SPACES,
    /** LB 15c, since Unicode 16: a break before a decimal point that starts a number. */
    DECIMAL_POINT_AFTER_SPACE,
    /** LB 21a, since Unicode 16: no longer between two Hebrew letters. */
    HEBREW_HYPHEN,
  }

  private static final Pattern POINT_THEN_DIGIT = Pattern.compile("[,.]\\p{M}*");
  private static final Pattern WORD_START_HYPHEN = Pattern.compile("-\\p{M}*");
  private static final Pattern QUOTED = Pattern.compile("[\"«].* \\p{M}?.*", Pattern.DOTALL);

  @Test
  void icuDepartsFromTheStandardInKnownWaysOnly() throws IOException {
    List<Sample> samples = BreakSamples.lineBreaks();
    assertEquals(LINE_SAMPLES, samples.size());
    Map<Departure, Integer> departures = new TreeMap<>();
    int departing = 0;
    for (Sample sample : samples) {
      BitSet differing = icu(sample.text());
      differing.xor(sample.breaks());
      departing += differing.isEmpty() ? 0 : 1;
      differing.stream().forEach(at -> departures.merge(departure(sample, at), 1, Integer::sum));
    }
    assertEquals(33, departing, departures::toString);
    assertEquals(
        Map.of(
            Departure.WORD_INITIAL_HYPHEN, 10,
            Departure.POINT_BEFORE_DIGIT, 14,
            Departure.QUOTE_AND_SPACES, 10,
            Departure.DECIMAL_POINT_AFTER_SPACE, 1,
            Departure.HEBREW_HYPHEN, 1),
        departures);
  }

  private static BitSet icu(String text) {
    BreakIterator it = BreakIterator.getLineInstance(ULocale.forLanguageTag("en-u-lb-strict"));
    it.setText(text);
    BitSet breaks = new BitSet();
    for (int at = it.next(); at != BreakIterator.DONE; at = it.next()) {
      breaks.set(at);
    }
    return breaks;
  }

  /** Explains a difference by what stands around it; fails where nothing does. */
  private static Departure departure(Sample sample, int at) {
    String before = sample.text().substring(0, at);
    String word = before.substring(before.lastIndexOf(' ') + 1);
    boolean standardBreaks = sample.breaks().get(at);
    boolean digitNext = Character.isDigit(sample.text().codePointAt(at));
    if (standardBreaks && WORD_START_HYPHEN.matcher(word).matches()) {
      return Departure.WORD_INITIAL_HYPHEN;
    }
    if (digitNext && POINT_THEN_DIGIT.matcher(word.replaceFirst("^\\p{L}", "")).matches()) {
      return Departure.POINT_BEFORE_DIGIT;
    }
    if (!standardBreaks && before.endsWith(" ") && sample.text().startsWith(".3", at)) {
      return Departure.DECIMAL_POINT_AFTER_SPACE;
    }
    if (!standardBreaks && before.equals("א-")) {
      return Departure.HEBREW_HYPHEN;
    }
    int quote = Math.max(before.lastIndexOf('"'), before.lastIndexOf('«'));
    if (quote >= 0 && QUOTED.matcher(before.substring(quote)).matches()) {
      return Departure.QUOTE_AND_SPACES;
    }
    return fail("unexplained at " + at + ": " + sample.comment());
  }

  @Test
  void everyBreakIsOneOfTheStandardAndEachThatIsLeftOutIsLeftOutByARule() throws IOException {
    LineBreaks breaks = new LineBreaks();
    Map<String, Integer> leftOut = new TreeMap<>();
    for (Sample sample : BreakSamples.lineBreaks()) {
      BitSet ours = ends(breaks.segments(sample.text(), Languages.of("en")));
      BitSet added = (BitSet) ours.clone();
      added.andNot(sample.breaks());
      added.stream().forEach(at -> departure(sample, at));
      BitSet icu = icu(sample.text());
      BitSet dropped = (BitSet) sample.breaks().clone();
      dropped.andNot(ours);
      dropped.stream()
          .forEach(
              at -> {
                if (icu.get(at)) {
                  leftOut.merge(rule(sample, at), 1, Integer::sum);
                } else {
                  departure(sample, at);
                }
              });
    }
    assertEquals(Map.of("cluster", 310, "dash at line's start", 242, "lone dash", 95), leftOut);
  }

  /** The rule of lettering, told apart from the code's own, that leaves a break out. */
  private static String rule(Sample sample, int at) {
    String before = sample.text().substring(0, at);
    String after = sample.text().substring(at);
    if (after.matches("(?s)[\\p{Pd}ー].*")) {
      return "dash at line's start";
    }
    if (after.matches("(?s)(…|⋯|\\.\\.).*")) {
      return "full stops";
    }
    if (before.matches("(?s)(.*\\n)?[\\p{Pd}ー\\p{Z}\\s\\u0085]+")
        && before.matches("(?s).*[\\p{Pd}ー].*")) {
      return "lone dash";
    }
    if (before.matches("(?s).*(?<!\\p{L})\\p{L}-")
        && after.startsWith(before.substring(at - 2, at - 1))) {
      return "stutter";
    }
    if (isInsideCluster(sample.text(), at)) {
      return "cluster";
    }
    return fail("no rule leaves out the break at " + at + ": " + sample.comment());
  }

  /** UAX #29, GB 9, 9a and 9b. */
  private static boolean isInsideCluster(String text, int at) {
    int next = graphemeClass(text.codePointAt(at));
    return next == UCharacter.GraphemeClusterBreak.EXTEND
        || next == UCharacter.GraphemeClusterBreak.ZWJ
        || next == UCharacter.GraphemeClusterBreak.SPACING_MARK
        || graphemeClass(text.codePointBefore(at)) == UCharacter.GraphemeClusterBreak.PREPEND;
  }

  private static int graphemeClass(int codePoint) {
    return UCharacter.getIntPropertyValue(codePoint, UProperty.GRAPHEME_CLUSTER_BREAK);
  }

  @Test
  void clustersAreThoseOfTheStandard() throws IOException {
    List<Sample> samples = BreakSamples.graphemeBreaks();
    assertEquals(GRAPHEME_SAMPLES, samples.size());
    List<String> differing =
        samples.stream()
            .filter(s -> !ends(new LineBreaks().clusters(s.text())).equals(s.breaks()))
            .map(Sample::text)
            .toList();
    // Scissors are pictographs no more since Unicode 16, so a joiner does not join them.
    assertEquals(List.of("\u2701\u200D\u2701"), differing);
  }

  @Test
  void noLineEndsInsideACluster() throws IOException {
    LineBreaks breaks = new LineBreaks();
    for (Sample sample : BreakSamples.graphemeBreaks()) {
      for (Language language : Languages.all()) {
        BitSet inside = ends(breaks.segments(sample.text(), language));
        inside.or(ends(breaks.looseSegments(sample.text(), language)));
        inside.andNot(sample.breaks());
        assertTrue(inside.isEmpty(), () -> language.tag() + ": " + sample.comment());
      }
    }
  }

  @Test
  void noLineOfTheCorpusEndsInsideACluster() throws IOException {
    LineBreaks breaks = new LineBreaks();
    for (Corpus.Line line : Corpus.all()) {
      BitSet inside = ends(breaks.looseSegments(line.text(), Languages.of(line.language())));
      inside.andNot(clusterEnds(line.text()));
      assertTrue(inside.isEmpty(), line::text);
    }
  }

  /** Clusters by the regular expressions of the JDK, which know UAX #29 by themselves. */
  private static BitSet clusterEnds(String text) {
    BitSet ends = new BitSet();
    Pattern.compile("\\X").matcher(text).results().forEach(cluster -> ends.set(cluster.end()));
    return ends;
  }

  private static BitSet ends(List<LineBreaks.Segment> segments) {
    BitSet ends = new BitSet();
    segments.forEach(segment -> ends.set(segment.end()));
    return ends;
  }
}
