package io.github.readfall.type.font;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Holds shaping to HarfBuzz, the reference shaper (https://harfbuzz.github.io), in a copy that the
 * JDK does not use: glyph by glyph, and the advance within 0.1 %.
 */
class HarfBuzzTest {

  private static final double RELATIVE = 0.001;
  private static final double SUM_UNITS = 0.01;
  private static final int AT_LEAST_LINES = 3500;
  private static final int AT_LEAST_LINES_A_LANGUAGE = 6;
  private static final int LANGUAGES = 23;
  private static final int LAST_CODE_POINT = 0xFFFF;
  private static final Pattern INVISIBLE =
      Pattern.compile("[\\u200C-\\u200F\\u2028-\\u202E\\u206A-\\u206F]");

  static List<FaceFile> files() throws FaceException {
    return OpenFaces.files();
  }

  /** Signs that a face shows by others of its own: hyphens, dashes, straight quotes. */
  private static final Map<Integer, Integer> LIKE =
      Map.ofEntries(
          Map.entry(0x2010, 0x2D),
          Map.entry(0x2011, 0x2D),
          Map.entry(0x2212, 0x2D),
          Map.entry(0x2012, 0x2013),
          Map.entry(0x2015, 0x2014),
          Map.entry(0xA0, 0x20),
          Map.entry(0x2018, 0x27),
          Map.entry(0x2019, 0x27),
          Map.entry(0x2BC, 0x27),
          Map.entry(0x2032, 0x27),
          Map.entry(0x201C, 0x22),
          Map.entry(0x201D, 0x22),
          Map.entry(0x2033, 0x22));

  @ParameterizedTest
  @MethodSource("files")
  void everyCoveredLineAndWordIsShapedAsHarfBuzzDoes(FaceFile file) throws Exception {
    Face face = OpenFaces.shelf().open(file);
    List<Corpus.Line> lines = covered(face);
    assertTrue(lines.size() > AT_LEAST_LINES_A_LANGUAGE, "too few lines to say anything");
    try (HarfBuzz reference = new HarfBuzz(file.path())) {
      for (Corpus.Line line : lines) {
        assertShapedAlike(face, reference, line.text(), line.rightToLeft());
        for (String word : line.words()) {
          assertShapedAlike(face, reference, word, line.rightToLeft());
        }
      }
    }
  }

  @Test
  void aCffFaceIsShapedAsHarfBuzzDoes() throws Exception {
    Path path = Path.of("src/test/resources/font/tidemark.otf");
    Face face = Face.open(new FaceFile("tidemark", path, "Tidemark", 400, false, false, ""));
    assertEquals(2 * 600 - 90, face.shape("AV").advance(), SUM_UNITS);
    try (HarfBuzz reference = new HarfBuzz(path)) {
      for (String text : List.of("AV", "HAVoVAx", "oVo Hx AVAV", "xx oo")) {
        assertShapedAlike(face, reference, text, false);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void aHyphenThatTheFaceLacksIsItsHyphenMinus(FaceFile file) throws Exception {
    Face face = OpenFaces.shelf().open(file);
    try (HarfBuzz reference = new HarfBuzz(file.path())) {
      for (int hyphen : new int[] {0x2010, 0x2011}) {
        if (!reference.covers(hyphen)) {
          String text = "A" + Character.toString(hyphen) + "V";
          double expected = reference.shape("A-V", false).advanceUnits();
          assertEquals(expected, face.shape(text).advance(), SUM_UNITS);
          assertNotEquals(0, face.shape(text).glyph(1));
        }
      }
    }
  }

  @Test
  void enoughLinesAreComparedAndEveryLanguageHasAFace() throws Exception {
    FontShelf shelf = OpenFaces.shelf();
    int pairs = 0;
    Set<Corpus.Line> covered = new HashSet<>();
    for (FaceFile file : shelf.files()) {
      List<Corpus.Line> lines = covered(shelf.open(file));
      pairs += lines.size();
      covered.addAll(lines);
    }
    assertTrue(pairs >= AT_LEAST_LINES, "only " + pairs + " pairs of face and line");

    Map<String, Integer> byLanguage = new TreeMap<>();
    Corpus.asWritten().forEach(line -> byLanguage.merge(line.language(), 1, Integer::sum));
    assertEquals(LANGUAGES, byLanguage.size());
    byLanguage.forEach((tag, n) -> assertTrue(n >= AT_LEAST_LINES_A_LANGUAGE, tag));
    for (Corpus.Line line : Corpus.asWritten()) {
      assertTrue(covered.contains(line), "no bundled face has all of: " + line);
    }
  }

  @Test
  void kerningJoiningAndLigaturesAreOn() throws Exception {
    Face grandstander = OpenFaces.regular("Grandstander");
    assertNotEquals(lettersAlone(grandstander, "AVATAR"), grandstander.shape("AVATAR").advance());
    Face noto = OpenFaces.regular("Noto Naskh Arabic");
    assertNotEquals(
        shape(noto, "ب", true).glyph(0), shape(noto, "ببب", true).glyph(1), "letters join");
    long withLigature = 0;
    for (FaceFile file : OpenFaces.files()) {
      Face face = OpenFaces.shelf().open(file);
      withLigature += face.covers('f') && face.shape("fi").size() == 1 ? 1 : 0;
    }
    assertTrue(withLigature > 0, "no bundled face joins f and i");
  }

  /** A line set from words apart is as wide as the line set at once. */
  @ParameterizedTest
  @MethodSource("files")
  void whereAFaceIsAdditiveWordsAndSpacesAddUpToTheLine(FaceFile file) throws Exception {
    Face face = OpenFaces.shelf().open(file);
    if (!face.isAdditive()) {
      return; // which faces these are is asserted below
    }
    double spaceUnits = face.shape(" ").advance();
    for (Corpus.Line line : covered(face)) {
      double sum = (line.words().size() - 1) * spaceUnits;
      for (String word : line.words()) {
        sum += shape(face, word, line.rightToLeft()).advance();
      }
      double whole = shape(face, line.text(), line.rightToLeft()).advance();
      assertEquals(whole, sum, SUM_UNITS, line.text());
    }
  }

  /**
   * Direction marks and joiners are always covered: they need no glyph. Hyphens are where the
   * hyphen-minus is.
   */
  @ParameterizedTest
  @MethodSource("files")
  void coverageIsTheCharacterMapOfTheFile(FaceFile file) throws Exception {
    Face face = OpenFaces.shelf().open(file);
    try (HarfBuzz reference = new HarfBuzz(file.path())) {
      for (int codePoint = ' '; codePoint <= LAST_CODE_POINT; codePoint++) {
        boolean invisible = INVISIBLE.matcher(Character.toString(codePoint)).matches();
        int like = LIKE.getOrDefault(codePoint, codePoint);
        boolean covered = reference.covers(codePoint) || reference.covers(like);
        if (!invisible && face.covers(codePoint) != covered) {
          fail(Integer.toHexString(codePoint) + " " + face.covers(codePoint));
        }
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "Balsamiq Sans, false", // kerns letters with the space
    "Bangers, false",
    "Chocolate Classical Sans, true",
    "Comic Neue, true",
    "Dongle, true",
    "Gaegu, true",
    "Grandstander, true",
    "Kalam, true",
    "Mali, true",
    "Noto Naskh Arabic, false",
    "Pangolin, true",
    "Playpen Sans, false", // alternates take turns across spaces
    "Playpen Sans Hebrew, false",
    "Yusei Magic, true",
    "ZCOOL KuaiLe, true"
  })
  void everyFaceOfAFamilyIsAdditiveOrNone(String family, boolean additive) throws Exception {
    FontShelf shelf = OpenFaces.shelf();
    int faces = 0;
    for (FaceFile file : shelf.files()) {
      if (file.family().equals(family)) {
        faces++;
        assertEquals(additive, shelf.open(file).isAdditive(), file.id());
      }
    }
    assertTrue(faces > 0, family);
  }

  private static List<Corpus.Line> covered(Face face) throws IOException {
    return Corpus.all().stream().filter(line -> line.isCoveredBy(face)).toList();
  }

  private static void assertShapedAlike(
      Face face, HarfBuzz reference, String text, boolean rightToLeft) {
    GlyphRow ours = shape(face, text, rightToLeft);
    HarfBuzz.Shaped theirs = reference.shape(text, rightToLeft);
    List<Integer> glyphs =
        IntStream.range(0, ours.size()).filter(ours::isDrawn).mapToObj(ours::glyph).toList();
    assertEquals(theirs.glyphs(), glyphs, text);
    assertEquals(
        theirs.advanceUnits(), ours.advance(), RELATIVE * theirs.advanceUnits(), () -> text);
  }

  private static GlyphRow shape(Face face, String text, boolean rightToLeft) {
    return face.shape(text.toCharArray(), 0, text.length(), rightToLeft);
  }

  private static double lettersAlone(Face face, String text) {
    return text.chars().mapToDouble(c -> face.shape(Character.toString(c)).advance()).sum();
  }
}
