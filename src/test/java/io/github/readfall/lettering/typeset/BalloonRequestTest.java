package io.github.readfall.lettering.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Region;
import io.github.readfall.base.viewing.LetterKind;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.script.Script;
import io.github.readfall.series.Episode;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.type.balloon.ShapeKind;
import io.github.readfall.type.font.FontShelf;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import org.junit.jupiter.params.provider.ValueSource;

/** Balloons whose shape, box or size a layout gives. */
class BalloonRequestTest {

  private static final FontShelf SHELF = Sample.shelf();
  private static final String WORDS = "ILSE: The wheel has turned by itself since the spring tide.";
  private static final BalloonRequest NOTHING = BalloonRequest.NOTHING;

  private static SetBalloon set(BalloonRequest wanted, String language, String cue) {
    Script script = Sample.script(language, cue);
    return new Typesetter(SHELF, HouseStyle.DEFAULT)
        .set(script, Map.of("p1-1", wanted))
        .balloons()
        .get(0);
  }

  private static BalloonRequest box(double width, double height) {
    return NOTHING.in(new Box(0, 0, width, height));
  }

  private static BalloonRequest fontPx(double px) {
    return new BalloonRequest(
        Optional.empty(), Optional.empty(), OptionalDouble.of(px), OptionalDouble.empty());
  }

  private static BalloonRequest capitalPx(double px) {
    return new BalloonRequest(
        Optional.empty(), Optional.empty(), OptionalDouble.empty(), OptionalDouble.of(px));
  }

  private static BalloonRequest shape(ShapeKind kind) {
    return new BalloonRequest(
        Optional.of(kind), Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty());
  }

  private static List<String> lines(SetBalloon balloon) {
    return balloon.lines().stream().map(line -> line.line().text()).toList();
  }

  private static double hundredths(double px) {
    return BigDecimal.valueOf(px).setScale(2, RoundingMode.HALF_UP).doubleValue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sample-scripts/overdue-tide/ep01",
        "sample-scripts/overdue-tide/ep02",
        "src/test/resources/report/shapes/ep01",
        "src/test/resources/report/scripts/ja.txt",
        "src/test/resources/report/scripts/ar.txt"
      })
  void aBalloonGoesIntoItsOwnBoxUnchanged(String path) throws Exception {
    Episode episode = Episode.read(EpisodeFiles.at(Path.of(path)).get(0), SHELF);
    Typesetter typesetter = new Typesetter(episode.shelf(), episode.style());
    List<SetBalloon> free = typesetter.set(episode.script()).balloons();
    Map<String, BalloonRequest> boxes = new HashMap<>();
    for (SetBalloon balloon : free) {
      Box box = balloon.box();
      Box written = new Box(12, 34, hundredths(box.width()), hundredths(box.height()));
      boxes.put(balloon.cue().id(), NOTHING.in(written));
    }
    List<SetBalloon> boxed = typesetter.set(episode.script(), boxes).balloons();
    for (int i = 0; i < free.size(); i++) {
      SetBalloon balloon = boxed.get(i);
      String id = balloon.cue().id();
      assertEquals(lines(free.get(i)), lines(balloon), id);
      if (balloon.look().shape() == ShapeKind.NONE) {
        assertEquals(free.get(i).box(), balloon.box(), id);
        continue;
      }
      GivenFit fit = balloon.given().orElseThrow();
      assertTrue(fit.fits(), id);
      assertEquals(1, fit.scale(), 0.001, id);
      assertTrue(fit.clearPx() >= balloon.marginPx() - 0.02, id + " " + fit);
      assertEquals(free.get(i).lines().get(0).xPx(), balloon.lines().get(0).xPx(), 0.02, id);
      assertEquals(
          free.get(i).lines().get(0).baselinePx(), balloon.lines().get(0).baselinePx(), 0.05, id);
    }
  }

  @ParameterizedTest
  @EnumSource(value = ShapeKind.class, mode = Mode.EXCLUDE, names = "NONE")
  void theDrawnOutlineIsTheBox(ShapeKind kind) {
    for (double[] size : new double[][] {{900, 500}, {420, 700}, {611.37, 340.02}, {90, 60}}) {
      BalloonRequest wanted = shape(kind).in(new Box(7, 8, size[0], size[1]));
      SetBalloon balloon = set(wanted, "en", WORDS);
      Box drawn = balloon.outline().bounds();
      assertEquals(0, drawn.x(), 0.001);
      assertEquals(0, drawn.y(), 0.001);
      assertEquals(size[0], drawn.width(), 0.001);
      assertEquals(size[1], drawn.height(), 0.001);
      assertEquals(drawn.width(), balloon.box().width(), 0.001);
      assertEquals(kind, balloon.look().shape());
      assertTrue(balloon.box().covers(balloon.inner()), kind + " " + balloon.inner());
    }
  }

  @ParameterizedTest
  @EnumSource(value = ShapeKind.class, mode = Mode.EXCLUDE, names = "NONE")
  void howFarTheTextIsFromItsOutlineIsWhatTheDrawingSays(ShapeKind kind) {
    for (double[] size : new double[][] {{1000, 600}, {700, 700}, {560, 420}}) {
      SetBalloon balloon = set(shape(kind).in(new Box(0, 0, size[0], size[1])), "en", WORDS);
      Region edge = Region.of(balloon.outline()).edge();
      double nearest =
          balloon.lines().stream()
              .map(line -> Region.of(ink(line)))
              .mapToDouble(edge::distanceTo)
              .min()
              .orElseThrow();
      double clearPx = Math.max(0, balloon.given().orElseThrow().clearPx());
      boolean plain = kind == ShapeKind.ELLIPSE || kind.word().endsWith("-box");
      assertTrue(nearest >= clearPx - 0.4, kind + ": " + nearest + " < " + clearPx);
      assertTrue(!plain || nearest <= clearPx + 0.4, kind + ": " + nearest + " > " + clearPx);
    }
  }

  private static Box ink(SetLine line) {
    var box = line.line().box();
    return Box.ofEdges(
        line.xPx() + box.left(),
        line.baselinePx() + box.top(),
        line.xPx() + box.right(),
        line.baselinePx() + box.bottom());
  }

  @Test
  void aLargeBoxKeepsReadingSizeAndTheTextInItsMiddle() {
    SetBalloon free = set(NOTHING, "en", WORDS);
    SetBalloon large = set(box(1400, 900), "en", WORDS);
    assertEquals(free.type(), large.type());
    assertTrue(large.given().orElseThrow().scale() > 1.5);
    double left = large.lines().stream().mapToDouble(line -> ink(line).x()).min().orElseThrow();
    double right =
        large.lines().stream().mapToDouble(line -> ink(line).right()).max().orElseThrow();
    assertEquals(700, (left + right) / 2, 0.5);
  }

  @Test
  void aTallBoxIsBrokenIntoMoreLinesThanAWideOne() {
    int tall = set(box(430, 760), "en", WORDS).lines().size();
    int wide = set(box(1300, 330), "en", WORDS).lines().size();
    assertTrue(tall > wide + 1, tall + " lines tall, " + wide + " wide");
  }

  @ParameterizedTest
  @CsvSource({"500, 300", "300, 500", "900, 150", "80, 60", "4, 4", "1, 700", "0, 0"})
  void whatIsMissingInASmallBoxIsEnough(double width, double height) {
    GivenFit fit = set(box(width, height), "en", WORDS).given().orElseThrow();
    assertFalse(fit.fits());
    assertTrue(fit.clearPx() < 23.6);
    double grown = fit.growBy() * 1.001;
    double wide = Math.max(1, width) * grown;
    double high = Math.max(1, height) * grown;
    GivenFit more = set(box(wide, high), "en", WORDS).given().orElseThrow();
    assertTrue(more.fits(), "grown as advised: " + more);
    String text = WORDS.substring("ILSE: ".length());
    assertTrue(fit.lettersTooMany() <= text.length());
    if (fit.lettersTooMany() < text.length()) {
      String shorter = "ILSE: " + text.substring(0, text.length() - fit.lettersTooMany());
      assertTrue(set(box(width, height), "en", shorter).given().orElseThrow().fits(), shorter);
    }
    Box own = fit.ownSize();
    assertTrue(set(box(own.width(), own.height()), "en", WORDS).given().orElseThrow().fits());
  }

  @Test
  void aBoxOfAnySizeAcceptsTheTextExactlyFromTheSmallestThatFits() {
    SetBalloon free = set(NOTHING, "en", WORDS);
    double aspect = 1.9;
    double low = 100;
    double high = 1400;
    while (high - low > 0.01) {
      double middle = (low + high) / 2;
      boolean fits = set(box(middle, middle / aspect), "en", WORDS).given().orElseThrow().fits();
      low = fits ? low : middle;
      high = fits ? middle : high;
    }
    SetBalloon just = set(box(high, high / aspect), "en", WORDS);
    assertEquals(1, just.given().orElseThrow().scale(), 0.001);
    assertEquals(free.marginPx(), just.given().orElseThrow().clearPx(), 0.05);
  }

  @ParameterizedTest
  @ValueSource(doubles = {31, 64, 120})
  void letteringThatExistsIsSetAtExactlyItsSize(double px) {
    SetBalloon usual = set(NOTHING, "en", WORDS);
    SetBalloon given = set(fontPx(px), "en", WORDS);
    double scale = px / usual.type().fontPx();
    assertEquals(px, given.type().fontPx(), 1e-9);
    assertEquals(usual.leadingPx() * scale, given.leadingPx(), 1e-9);
    assertEquals(usual.marginPx() * scale, given.marginPx(), 1e-9);
    given.types().forEach(type -> assertEquals(px, type.fontPx(), 1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "en, ILSE: It is counting., CAPITAL",
    "ja, イルゼ: 水車小屋。, IDEOGRAPH",
    "ar, إلسه: الطاحونة واقفة., ALEF",
    "he, אילזה: הטחנה עומדת., HE"
  })
  void aMeasuredHeightDecidesTheSize(String language, String cue, LetterKind kind) {
    SetBalloon given = set(capitalPx(44), language, cue);
    assertEquals(44, given.type().heightPx(kind), 1e-9);
    assertEquals(44, given.characterPx(), 1e-9);
  }

  @Test
  void aWhisperThatExistsIsNotMadeSmallerAgain() {
    SetBalloon whisper = set(fontPx(60), "en", "ILSE (whisper): Hush.");
    assertEquals(60, whisper.type().fontPx(), 1e-9);
    assertTrue(whisper.wanted().isLettered());
  }

  @Test
  void aMarginOfLetteringThatExistsGoesWithItsSize() {
    SetBalloon half = set(fontPx(set(NOTHING, "en", WORDS).type().fontPx() / 2), "en", WORDS);
    SetBalloon usual = set(NOTHING, "en", WORDS);
    assertEquals(usual.box().width() / 2, half.box().width(), 0.5);
    assertEquals(lines(usual), lines(half));
  }

  @Test
  void aSoundEffectKeepsTheBoundsOfItsInk() {
    SetBalloon free = set(NOTHING, "en", "SFX: Krrank / krrank");
    SetBalloon boxed = set(box(900, 900), "en", "SFX: Krrank / krrank");
    assertEquals(free.box(), boxed.box());
    assertTrue(boxed.given().isEmpty());
  }
}
