package io.github.readfall.lettering.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.type.balloon.Enclosed;
import io.github.readfall.type.balloon.FitRules;
import io.github.readfall.type.balloon.Stack;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.text.LineBox;
import io.github.readfall.type.text.LineTable;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Text into outlines that are already there, against trying every way to break it. */
class GivenOutlineTest {

  private static final FontShelf SHELF = Sample.shelf();
  private static final String WORDS = "ILSE: The wheel has turned by itself since the spring tide.";

  @Test
  void goesIntoItsOwnOutlineAtReadingSize() {
    ShapedCue cue = Sample.shaped(SHELF, "en", WORDS).get(0);
    SetBalloon balloon = Sample.set(SHELF, "en", WORDS).get(0);
    GivenOutline into = GivenOutline.of(cue, balloon.box().width(), balloon.box().height(), 1);
    assertTrue(into.scale() > 0.9999, "scale " + into.scale());
    assertEquals(0, into.lettersTooMany());
  }

  @ParameterizedTest
  @CsvSource({"900, 500", "600, 600", "400, 700", "300, 150"})
  void theLargestSizeIsThatOfTheBestOfAllBreaks(double width, double height) {
    ShapedCue cue = Sample.shaped(SHELF, "en", WORDS).get(0);
    GivenOutline into = GivenOutline.of(cue, width, height, 0.8);
    assertEquals(1, into.scale() / bestOfAllBreaks(cue, width, height), 0.001);
    assertEquals(into.scale() * cue.type().fontPx(), into.fontPx(), 1e-9);
    assertEquals(into.scale() >= 0.8, into.fits());
  }

  private static double bestOfAllBreaks(ShapedCue cue, double width, double height) {
    FitRules rules = cue.rules().withAspect(width / height).withoutMaxWidth();
    LineTable table = cue.passage().measure(Double.MAX_VALUE);
    double best = 0;
    for (int bits = 0; bits < 1 << (table.size() - 1); bits++) {
      List<LineBox> lines = new ArrayList<>();
      int first = 0;
      for (int last = 0; last < table.size(); last++) {
        if (last == table.size() - 1 || (bits >> last & 1) == 1) {
          lines.add(table.box(first, last));
          first = last + 1;
        }
      }
      Enclosed enclosed =
          cue.enclosure()
              .smallest(Stack.of(lines, rules.leadingPx()), rules, Double.POSITIVE_INFINITY);
      best = Math.max(best, width / (2 * enclosed.halfWidthPx()));
    }
    return best;
  }

  @Test
  void saysWhatIsMissingWhereItDoesNotGoIn() {
    ShapedCue cue = Sample.shaped(SHELF, "en", WORDS).get(0);
    GivenOutline into = GivenOutline.of(cue, 500, 300, 1);
    assertFalse(into.fits());
    GivenOutline grown =
        GivenOutline.of(cue, 500 * into.growBy() * 1.001, 300 * into.growBy() * 1.001, 1);
    assertTrue(grown.fits(), "the outline grown as advised");
    String text = cue.passage().text();
    String shorter = text.substring(0, text.length() - into.lettersTooMany());
    ShapedCue cut = Sample.shaped(SHELF, "en", "ILSE: " + shorter).get(0);
    assertTrue(GivenOutline.of(cut, 500, 300, 1).fits(), "the text shortened as advised");
    assertTrue(into.lettersTooMany() < text.length(), "something is left");
  }
}
