package io.github.readfall.lettering.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.font.Ink;
import io.github.readfall.type.text.PlacedRun;
import io.github.readfall.type.text.TextLine;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Full-width marks at the ends of lines and beside one another. */
class CompressionTest {

  private static final FontShelf SHELF = Sample.shelf();

  /** Faces drawn by hand leave a little less than half a square empty beside some marks. */
  private static final double HALVES = 0.25;

  /**
   * Halves of a square that one line gives up. Japanese: W3C JLREQ 3.1.4 to 3.1.9 and its appendix
   * B, from memory: closing and opening marks stand solid or half a square apart, and at a line's
   * ends nothing is empty. Chinese: W3C CLREQ on the width of punctuation, from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "ja, あいう, 0",
    "ja, あ、い。う, 0",
    "ja, あいう。, 1",
    "ja, 「あいう」, 2",
    "ja, 「あいう。」, 3",
    "ja, あ」「い, 1",
    "ja, あ」。い, 1",
    "ja, あ「（い, 1",
    "ja, あいう！, 0",
    "ja, あ」！い, 0",
    "zh, 海和海, 0",
    "zh, 海，海。, 1",
    "zh, 海海！, 1",
    "zh, 海：“海, 1",
    "zh, “海。”, 3",
    "zh, （海），（海, 3",
    "zh-Hant, 「海海」, 2",
    "zh-Hant, 海，海, 0",
    "zh-Hant, 海海。, 0.5",
    "zh-Hant, 海。」海, 0.5",
    "ko, “바다.”, 0",
    "en, “Sea.”, 0"
  })
  void giveUpTheirEmptyHalf(String tag, String text, double halves) {
    TextLine line =
        Sample.shaped(SHELF, tag, "ILSE: " + text).get(0).passage().line(0, last(tag, text));
    double halfPx = line.runs().get(0).type().fontPx() / 2;
    assertEquals(halves, line.closedUpPx() / halfPx, HALVES * Math.max(halves, 0.4), text);
    double widthPx = line.box().width() - line.box().balancePx();
    assertEquals(line.advancePx() - line.closedUpPx(), widthPx, 0.1 * halfPx, text);
  }

  private static int last(String tag, String text) {
    return Sample.shaped(SHELF, tag, "ILSE: " + text).get(0).passage().segments().size() - 1;
  }

  /** By the ink: a square that is half empty at one end would put it an eighth of a square off. */
  @ParameterizedTest
  @ValueSource(strings = {"ja", "zh"})
  void theInkOfEveryLineIsInTheMiddle(String tag) {
    int withMarks = 0;
    for (String text : Declaration.texts(tag)) {
      SetBalloon balloon = Sample.set(SHELF, tag, "ILSE: " + text).get(0);
      double middle = balloon.box().width() / 2;
      for (SetLine line : balloon.lines()) {
        List<double[]> ink = ink(line.line());
        double inkMiddle = (ink.get(0)[0] + ink.get(ink.size() - 1)[1]) / 2 + line.xPx();
        assertEquals(middle, inkMiddle, 0.12 * balloon.type().fontPx(), line.line().text());
        withMarks += line.line().closedUpPx() > 0 ? 1 : 0;
      }
    }
    assertTrue(withMarks > 20, withMarks + " lines with marks");
  }

  @ParameterizedTest
  @ValueSource(strings = {"ja", "zh", "zh-Hant"})
  void noMarkRunsIntoItsNeighbour(String tag) {
    String all = "ILSE: 「海」「海。」、（海）。『海』。《海》、《海》：「海！」？“海”。";
    List<SetBalloon> balloons = new ArrayList<>(Sample.set(SHELF, tag, all));
    Declaration.texts(tag)
        .forEach(text -> balloons.addAll(Sample.set(SHELF, tag, "ILSE: " + text)));
    for (SetBalloon balloon : balloons) {
      for (SetLine line : balloon.lines()) {
        List<double[]> ink = ink(line.line());
        for (int i = 1; i < ink.size(); i++) {
          double gapPx = ink.get(i)[0] - ink.get(i - 1)[1];
          assertTrue(gapPx > -0.02 * balloon.type().fontPx(), line.line().text() + " at " + i);
        }
      }
    }
  }

  /** From where to where each glyph paints. */
  private static List<double[]> ink(TextLine line) {
    List<double[]> inks = new ArrayList<>();
    for (PlacedRun run : line.runs()) {
      double scale = run.type().pxPerUnit();
      for (int i = 0; i < run.glyphs().size(); i++) {
        Ink ink = run.type().face().ink(run.glyphs().glyph(i), run.type().slantDeg());
        if (run.glyphs().isDrawn(i) && !ink.isEmpty()) {
          double x = run.glyphXPx(i);
          inks.add(new double[] {x + ink.left() * scale, x + ink.right() * scale});
        }
      }
    }
    return inks;
  }
}
