package io.github.readfall.type.font;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.viewing.LetterKind;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.File;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What a face says of its letters, held against the file and against what is painted. */
class FaceTest {

  private static final int EM_PX = 200;
  private static final double EXACT_UNITS = 1e-6;
  private static final double INK_EM = 0.004; // extents count points that a curve is drawn by

  static List<FaceFile> files() throws FaceException {
    return OpenFaces.files();
  }

  /**
   * The ink of each script's letter, by HarfBuzz's glyph extents: what is above the baseline or, of
   * letters that fill a square, all of it.
   */
  @ParameterizedTest
  @MethodSource("files")
  void letterHeightsAreThoseOfTheInk(FaceFile file) throws Exception {
    Face face = OpenFaces.shelf().open(file);
    try (HarfBuzz reference = new HarfBuzz(file.path())) {
      for (LetterKind kind : LetterKind.values()) {
        double expected =
            kind.letters().stream()
                .filter(letter -> letter.codePoints().allMatch(reference::covers))
                .findFirst()
                .map(letter -> heightUnits(letter, kind, reference))
                .orElse(0.0);
        assertEquals(expected, face.heightUnits(kind), INK_EM * face.unitsPerEm(), kind.inWords());
      }
    }
  }

  private static double heightUnits(String letter, LetterKind kind, HarfBuzz reference) {
    boolean rightToLeft = letter.codePointAt(0) >= 0x590 && letter.codePointAt(0) < 0x900;
    List<Ink> inks =
        reference.shape(letter, rightToLeft).glyphs().stream().map(reference::ink).toList();
    return kind.isSquare()
        ? inks.get(0).height()
        : inks.stream().mapToDouble(Ink::top).max().orElseThrow();
  }

  /** Of every letter that a script is judged by, a bundled face can tell the height. */
  @ParameterizedTest
  @EnumSource(LetterKind.class)
  void everyLetterIsInABundledFace(LetterKind kind) throws Exception {
    double most = 0;
    for (FaceFile file : files()) {
      Face face = OpenFaces.shelf().open(file);
      most = Math.max(most, face.heightUnits(kind) / face.unitsPerEm());
    }
    assertTrue(most > 0.3, kind + " is at most " + most + " em high");
  }

  @ParameterizedTest
  @CsvSource({
    "Grandstander, HgQjÅ&@fß%Éy", "Bangers, HgQjÅ&@fß%Éy", "Playpen Sans, ЖщЁΩΰgjQ",
    "Mali, ผู้ญฐ", "Noto Naskh Arabic, عغجلمة", "Gaegu, 값닭한"
  })
  void inkBoundsAreThoseOfThePaintedGlyph(String family, String letters) throws Exception {
    Face face = OpenFaces.regular(family);
    Font font =
        Font.createFont(Font.TRUETYPE_FONT, new File(face.file().path().toString()))
            .deriveFont((float) EM_PX);
    double scale = (double) EM_PX / face.unitsPerEm();
    GlyphRow row = face.shape(letters);
    int compared = 0;
    for (int i = 0; i < row.size(); i++) {
      Ink ink = face.ink(row.glyph(i), 0);
      if (!ink.isEmpty()) {
        Ink painted = painted(font, row.glyph(i));
        String what = letters + " glyph " + i;
        assertEquals(painted.left(), ink.left() * scale, 1, what);
        assertEquals(painted.right(), ink.right() * scale, 1, what);
        assertEquals(painted.top(), ink.top() * scale, 1, what);
        assertEquals(painted.bottom(), ink.bottom() * scale, 1, what);
        compared++;
      }
    }
    assertTrue(compared >= 3, "compared " + compared);
  }

  /** Bounds of the pixels that the rasteriser darkens, from the glyph's origin, y upwards. */
  private static Ink painted(Font font, int glyph) {
    int side = 4 * EM_PX;
    int middle = 2 * EM_PX;
    BufferedImage image = new BufferedImage(side, side, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setColor(Color.WHITE);
    g.drawGlyphVector(
        font.createGlyphVector(g.getFontRenderContext(), new int[] {glyph}), middle, middle);
    g.dispose();
    int[] samples = image.getRaster().getSamples(0, 0, side, side, 0, new int[side * side]);
    int[] dark = IntStream.range(0, side * side).filter(p -> samples[p] > 0).toArray();
    int left = IntStream.of(dark).map(p -> p % side).min().orElseThrow();
    int right = 1 + IntStream.of(dark).map(p -> p % side).max().orElseThrow();
    int top = IntStream.of(dark).map(p -> p / side).min().orElseThrow();
    int bottom = 1 + IntStream.of(dark).map(p -> p / side).max().orElseThrow();
    return new Ink(left - middle, middle - bottom, right - middle, middle - top);
  }

  @Test
  void leaningMovesInkByItsHeightTimesTheTangent() throws Exception {
    Face face = OpenFaces.regular("Chocolate Classical Sans");
    int glyph = face.shape("H").glyph(0); // upright stems on the baseline
    Ink upright = face.ink(glyph, 0);
    Ink leaning = face.ink(glyph, 45);
    assertEquals(0, upright.bottom(), EXACT_UNITS);
    assertEquals(upright.left(), leaning.left(), EXACT_UNITS);
    assertEquals(upright.right() + upright.top(), leaning.right(), 1e-3, "tan 45° is 1");
    assertEquals(upright.top(), leaning.top(), EXACT_UNITS);

    int comma = face.shape(",").glyph(0); // below the baseline, so it goes left
    assertTrue(face.ink(comma, 30).left() < face.ink(comma, 0).left());
    assertTrue(face.ink(glyph, -10).left() < upright.left(), "a negative angle leans left");
  }

  @Test
  void aSpaceHasNoInk() throws Exception {
    assertEquals(Ink.NONE, OpenFaces.ink(OpenFaces.regular("Grandstander"), " "));
  }

  @ParameterizedTest
  @MethodSource("files")
  void latinShapingDoesNotDependOnTheTextAround(FaceFile file) throws Exception {
    Face face = OpenFaces.shelf().open(file);
    String inner = "AVATAR fi To, we";
    char[] around = ("Tf. " + inner + " ijk").toCharArray();
    GlyphRow within = face.shape(around, 4, 4 + inner.length(), false);
    assertEquals(signature(face.shape(inner)), signature(within));
    assertEquals(0, within.charIndex(0), "indices count from the start of what is shaped");
  }

  @Test
  void glyphsOfRightToLeftTextStandInVisualOrder() throws Exception {
    Face face = OpenFaces.regular("Playpen Sans Hebrew");
    String text = "אבג";
    GlyphRow row = face.shape(text.toCharArray(), 0, text.length(), true);
    assertEquals(List.of(2, 1, 0), IntStream.range(0, 3).mapToObj(row::charIndex).toList());
    assertTrue(row.x(0) < row.x(1) && row.x(1) < row.x(2) && row.x(2) < row.advance());
  }

  @Test
  void marksAreLiftedAboveTheirLetters() throws Exception {
    Face face = OpenFaces.regular("Mali");
    GlyphRow low = face.shape("ก้");
    GlyphRow high = face.shape("กี้"); // the tone mark must clear the vowel
    double lowTop = low.y(1) + face.ink(low.glyph(1), 0).top();
    double highTop = high.y(2) + face.ink(high.glyph(2), 0).top();
    assertTrue(highTop > lowTop, highTop + " above " + lowTop);
  }

  @Test
  void facesWithContextualAlternatesSaySo() throws Exception {
    assertTrue(OpenFaces.regular("Playpen Sans").isContextual()); // its GSUB has calt
    assertFalse(OpenFaces.regular("Balsamiq Sans").isContextual()); // kerns, but no more
    assertFalse(OpenFaces.regular("Grandstander").isContextual());
  }

  @Test
  void lettersTheFaceLacksAreNotCovered() throws Exception {
    Face face = OpenFaces.regular("Grandstander");
    assertTrue(face.covers('A'));
    assertTrue(!face.covers('Ж') && !face.covers('国') && !face.covers(0x1F600));
  }

  @Test
  void fourThreadsGetTheRowsThatOneGets() throws Exception {
    List<Corpus.Line> lines = Corpus.all();
    String alone = everything(OpenFaces.regular("Playpen Sans"), lines);
    Face shared = OpenFaces.regular("Playpen Sans"); // fresh: its inks are not yet known
    assertNotEquals("", alone);
    ExecutorService four = Executors.newFixedThreadPool(4);
    try {
      Callable<String> job = () -> everything(shared, lines);
      for (Future<String> got : four.invokeAll(Collections.nCopies(4, job))) {
        assertEquals(alone, got.get());
      }
    } finally {
      four.shutdown();
    }
  }

  private static String everything(Face face, List<Corpus.Line> lines) {
    List<String> seen = new ArrayList<>();
    for (Corpus.Line line : lines) {
      if (line.isCoveredBy(face)) {
        GlyphRow row = face.shape(line.text());
        seen.add(signature(row));
        seen.add(face.ink(row.glyph(0), 10).toString());
      }
    }
    return String.join("\n", seen);
  }

  private static String signature(GlyphRow row) {
    return IntStream.range(0, row.size())
            .mapToObj(i -> row.glyph(i) + "@" + row.x(i) + "," + row.y(i))
            .collect(Collectors.joining(" "))
        + " -> "
        + row.advance();
  }
}
