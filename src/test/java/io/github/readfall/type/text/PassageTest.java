package io.github.readfall.type.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.type.font.Corpus;
import io.github.readfall.type.font.Face;
import io.github.readfall.type.font.FaceFile;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.font.HarfBuzz;
import io.github.readfall.type.font.OpenFaces;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.IntUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a passage measures, against what it sets and against shapers and orders of others. */
class PassageTest {

  private static final double FONT_PX = 84;
  private static final double SAME_PX = 0.02;
  private static final double RELATIVE = 0.001;
  private static final int TEXTS_A_FACE = 12;
  private static final LineBreaks BREAKS = new LineBreaks();

  /** Chosen for their kerning, their hyphens, quotes and dashes, and what may overhang. */
  private static final List<String> WORDS =
      List.of(
          "AVATAR",
          "To",
          "Wa.",
          "Yo,",
          "Ty’s",
          "LY’V",
          "don’t",
          "won't",
          "W-w-wait",
          "x-ray",
          "T-T-Tom",
          "VAT-AVOW",
          "L’Y",
          "“AVOW”",
          "‘Tis",
          "(Wyn)",
          "—",
          "– ",
          "No—yes",
          "wait…",
          "P.T.",
          "fjord",
          "office",
          "a",
          "I",
          "Jeff;",
          "7.45",
          "11-17",
          "Äpfel",
          "Öl",
          "Ŕ",
          "gypsy",
          "AWAY",
          "W",
          "T",
          "f",
          "...",
          "A/V",
          "Vo\u00ADlt",
          "AV\u2011AT",
          "Y\u00A0V",
          "KRRANK!",
          "Ÿ?!",
          "«V»",
          "T\u200BAV",
          "\n");

  static Stream<Arguments> facesAndTracking() {
    List<Arguments> cases = new ArrayList<>();
    for (String family :
        List.of("Grandstander", "Comic Neue", "Pangolin", "Balsamiq Sans", "Bangers", "Mali")) {
      for (double trackingPx : new double[] {0, 1.7, -0.6}) {
        cases.add(Arguments.of(family, trackingPx));
      }
    }
    return cases.stream();
  }

  /** The claim that lets a search add numbers up: each sum is the line as it will be set. */
  @ParameterizedTest
  @MethodSource("facesAndTracking")
  void everyMeasuredLineIsAsWideAndHighAsTheLineThatIsSet(String family, double trackingPx)
      throws Exception {
    FontShelf shelf = OpenFaces.shelf();
    Face regular = shelf.open(shelf.find(family, 400, false).orElseThrow());
    Face bold = shelf.open(shelf.find(family, 700, true).orElseThrow());
    for (int seed = 0; seed < TEXTS_A_FACE; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      String text = text(random);
      List<StyledText> stretches = stretches(text, regular, bold, random);
      assertAdditive(Passage.of(text, Languages.of("en"), stretches, trackingPx, BREAKS));
    }
  }

  private static String text(SplittableRandom random) {
    StringBuilder text = new StringBuilder("A");
    for (int i = random.nextInt(1, 12); i > 0; i--) {
      text.append(random.nextInt(12) == 0 ? "" : " ");
      text.append(WORDS.get(random.nextInt(WORDS.size())));
    }
    return text.toString().strip();
  }

  /** Plain, then emphasis in another weight and slant, then plain; cut anywhere, also in words. */
  private static List<StyledText> stretches(
      String text, Face regular, Face bold, SplittableRandom random) {
    FaceChain plain = new OneFace(new SizedFace(regular, FONT_PX, 0));
    FaceChain strong = new OneFace(new SizedFace(bold, FONT_PX * 1.1, random.nextInt(2) * 9));
    int from = random.nextInt(text.length() + 1);
    int to = random.nextInt(from, text.length() + 1);
    return Stream.of(
            new StyledText(0, from, plain),
            new StyledText(from, to, strong),
            new StyledText(to, text.length(), plain))
        .filter(stretch -> stretch.end() > stretch.start())
        .toList();
  }

  private static void assertAdditive(Passage passage) {
    LineTable table = passage.measure(Double.MAX_VALUE);
    assertEquals(passage.segments().size(), table.size());
    for (int first = 0; first < table.size(); first++) {
      for (int last = first; last <= table.lastOf(first); last++) {
        LineBox sum = table.box(first, last);
        LineBox set = passage.line(first, last).box();
        String what = passage.text() + ": " + passage.line(first, last).text();
        assertEquals(set.left(), sum.left(), SAME_PX, what);
        assertEquals(set.right(), sum.right(), SAME_PX, what);
        assertEquals(set.top(), sum.top(), SAME_PX, what);
        assertEquals(set.bottom(), sum.bottom(), SAME_PX, what);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"Grandstander", "Balsamiq Sans"})
  void theCorpusIsMeasuredAsItIsSet(String family) throws Exception {
    SizedFace type = new SizedFace(OpenFaces.regular(family), FONT_PX, 0);
    for (Corpus.Line line : Corpus.all()) {
      if (line.isCoveredBy(type.face())) {
        assertAdditive(passage(line.text(), Languages.of(line.language()), type));
      }
    }
  }

  private static Passage passage(String text, Language language, SizedFace type) {
    StyledText all = new StyledText(0, text.length(), new OneFace(type));
    return Passage.of(text, language, List.of(all), 0, BREAKS);
  }

  static List<FaceFile> files() throws Exception {
    return OpenFaces.files();
  }

  /** Runs and their order by the JDK's UAX #9, and each run's advance by HarfBuzz. */
  @ParameterizedTest
  @MethodSource("files")
  void everyLineOfTheCorpusIsSetAsHarfBuzzSetsItsRuns(FaceFile file) throws Exception {
    Face face = OpenFaces.shelf().open(file);
    SizedFace type = new SizedFace(face, FONT_PX, 0);
    int compared = 0;
    try (HarfBuzz reference = new HarfBuzz(file.path())) {
      for (Corpus.Line line : Corpus.all()) {
        if (line.isCoveredBy(face)) {
          Language language = Languages.of(line.language());
          Passage passage = passage(line.text(), language, type);
          TextLine set = passage.line(0, passage.segments().size() - 1);
          double sum = assertRunsAlike(set, language, reference, type);
          assertEquals(sum, set.advancePx(), RELATIVE * sum, line.text());
          compared++;
        }
      }
    }
    assertTrue(compared > 6, "too few lines to say anything");
  }

  private static double assertRunsAlike(
      TextLine set, Language language, HarfBuzz reference, SizedFace type) {
    List<Reordered> expected = Reordered.runs(set.text(), 0, set.text().length(), language, i -> 0);
    assertEquals(
        expected.stream().map(Reordered::text).toList(),
        set.runs().stream().map(PlacedRun::text).toList());
    double sum = 0;
    for (int i = 0; i < expected.size(); i++) {
      Reordered run = expected.get(i);
      double units = reference.shape(run.text(), run.rightToLeft()).advanceUnits();
      double advance = units * type.pxPerUnit();
      assertEquals(sum, set.runs().get(i).xPx(), RELATIVE * sum + 1e-9, run.text());
      assertEquals(advance, set.runs().get(i).advancePx(), RELATIVE * advance, run.text());
      sum += advance;
    }
    return sum;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ar | قال Tom إن البحر 12 مترا!",
        "ar | السفينة TIDEMARK 7.45 وصلت (اليوم).",
        "ar | Vrrr— سمعنا «KRRANK» ثم ١٢٣ صوتا",
        "ar | رقم 1-2-3 ثم A/V انتهى 50%",
        "he | אמר Wyn: ‏\"לא\" ב־7.45 (מחר)",
        "he | שלום WAVE PIER 12:30 להתראות!",
        "he | KRRANK!",
        "en | Tom said “שלום” and left (at 5).",
        "en | the sign reads מגדלור 12 / منارة now",
        "en | abc אבג 123 دهو def"
      })
  void mixedLinesRunInTheOrderOfTheStandardWhereverTheyAreBroken(String tag, String text)
      throws Exception {
    Language language = Languages.of(tag);
    Passage passage =
        passage(text, language, new SizedFace(OpenFaces.regular("Grandstander"), FONT_PX, 0));
    assertOrder(passage, language, c -> 0);
  }

  /** Two faces, so that a run of one direction is of several. */
  @ParameterizedTest
  @ValueSource(strings = {"ar", "he", "en"})
  void facesChangeInTheOrderOfTheStandardToo(String tag) throws Exception {
    Language language = Languages.of(tag);
    String text = "קולa גלx 12 ים—bc שקט 7";
    SizedFace latin = new SizedFace(OpenFaces.regular("Grandstander"), FONT_PX, 0);
    SizedFace hebrew = new SizedFace(OpenFaces.regular("Playpen Sans Hebrew"), FONT_PX, 0);
    FaceChain chain =
        new FaceChain() {
          @Override
          public SizedFace preferred() {
            return latin;
          }

          @Override
          public SizedFace choose(String cluster, SizedFace inUse) {
            return isVowelled(cluster.charAt(0)) ? hebrew : latin;
          }
        };
    Passage passage =
        Passage.of(text, language, List.of(new StyledText(0, text.length(), chain)), 0, BREAKS);
    assertEquals(
        List.of(latin, hebrew),
        passage.types().stream()
            .sorted((a, b) -> a.face().file().family().compareTo(b.face().file().family()))
            .toList());
    assertOrder(passage, language, c -> isVowelled((char) c) ? 1 : 0);
  }

  /** Some Hebrew letters and not others, so that faces change inside words. */
  private static boolean isVowelled(char letter) {
    return "ויא".indexOf(letter) >= 0;
  }

  private static void assertOrder(Passage passage, Language language, IntUnaryOperator face) {
    int n = passage.segments().size();
    for (int first = 0; first < n; first++) {
      for (int last = first; last < n; last++) {
        TextLine set = passage.line(first, last);
        int from = passage.segments().get(first).start();
        assertEquals(
            Reordered.runs(passage.text(), from, from + set.text().length(), language, face)
                .stream()
                .map(Reordered::text)
                .toList(),
            set.runs().stream().map(PlacedRun::text).toList(),
            set.text());
      }
    }
  }

  @Test
  void runsOfALineFollowOneAnotherWithoutGapOrOverlap() throws Exception {
    SizedFace type = new SizedFace(OpenFaces.regular("Grandstander"), FONT_PX, 0);
    String text = "Tom said שלום and then 12 times";
    StyledText all = new StyledText(0, text.length(), new OneFace(type));
    Passage passage = Passage.of(text, Languages.of("he"), List.of(all), 2, BREAKS);
    double x = 0;
    TextLine line = passage.line(0, passage.segments().size() - 1);
    for (PlacedRun run : line.runs()) {
      assertEquals(x, run.xPx(), 1e-9);
      x += run.advancePx() + 2 * run.text().length();
    }
    assertEquals(x - 2, line.box().right(), 1, "no letterspacing after the last letter");
  }

  @Test
  void capitalsCountFromTheirHeightAndDescendersByTheirInk() throws Exception {
    SizedFace type = new SizedFace(OpenFaces.regular("Pangolin"), FONT_PX, 0);
    LineBox capitals = passage("HOE", Languages.of("en"), type).line(0, 0).box();
    assertEquals(-type.capitalPx(), capitals.top());
    assertEquals(0, capitals.bottom());
    LineBox accented = passage("ÖH", Languages.of("de"), type).line(0, 0).box();
    assertTrue(accented.top() < -1.1 * type.capitalPx());
    LineBox small = passage("gypsy", Languages.of("en"), type).line(0, 0).box();
    assertTrue(small.bottom() > 0.1 * type.capitalPx());
    assertTrue(small.top() > -0.9 * type.capitalPx(), small::toString);
  }

  @Test
  void noInkLeavesTheBoxOfItsLine() throws Exception {
    for (String family : List.of("Grandstander", "Pangolin", "Bangers")) {
      SizedFace type = new SizedFace(OpenFaces.regular(family), FONT_PX, 0);
      for (Corpus.Line line : Corpus.all()) {
        if (line.isCoveredBy(type.face())) {
          assertInkInside(passage(line.text(), Languages.of(line.language()), type));
        }
      }
    }
  }

  private static void assertInkInside(Passage passage) {
    TextLine line = passage.line(0, passage.segments().size() - 1);
    PlacedRun run = line.runs().get(0);
    for (int i = 0; i < run.glyphs().size(); i++) {
      Rectangle2D ink = run.type().face().outline(run.glyphs().glyph(i), 0).getBounds2D();
      if (!ink.isEmpty()) {
        double scale = run.type().pxPerUnit();
        String what = String.format(Locale.ROOT, "glyph %d of %s", i, line.text());
        assertTrue(run.glyphXPx(i) + ink.getMinX() * scale > line.box().left() - 0.1, what);
        assertTrue(run.glyphXPx(i) + ink.getMaxX() * scale < line.box().right() + 0.1, what);
        assertTrue(-run.glyphYPx(i) + ink.getMinY() * scale > line.box().top() - 0.8, what);
        assertTrue(-run.glyphYPx(i) + ink.getMaxY() * scale < line.box().bottom() + 0.8, what);
      }
    }
  }
}
