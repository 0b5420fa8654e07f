package io.github.readfall.lettering.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.type.font.Face;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.font.HarfBuzz;
import io.github.readfall.type.font.Ink;
import io.github.readfall.type.font.Ornament;
import io.github.readfall.type.text.PlacedRun;
import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BarredCapitalTest {

  private static final FontShelf SHELF = Sample.shelf();

  private static Stream<PlacedRun> runs(String text) {
    return Sample.set(SHELF, "en", "ILSE: " + text).get(0).lines().stream()
        .flatMap(line -> line.line().runs().stream());
  }

  private static List<String> barred(String text) {
    return runs(text)
        .filter(run -> run.ornament() == Ornament.BARRED_I)
        .map(PlacedRun::text)
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"I'm in India.", "So *I* fell in.", "Is it? Who am I?"})
  void thePronounIsARunOfItsOwn(String text) {
    assertEquals(List.of("I"), barred(text));
  }

  /** Every other run is as long as HarfBuzz, the reference shaper, makes it. */
  @Test
  void theRestIsAsLongAsHarfBuzzMakesIt() throws Exception {
    for (PlacedRun run : runs("I said \"I'll see\" and I'm in...").toList()) {
      try (HarfBuzz reference = new HarfBuzz(run.type().face().file().path())) {
        double plain = reference.shape(run.text(), false).advanceUnits() * run.type().pxPerUnit();
        if (run.ornament() == Ornament.NONE) {
          assertEquals(plain, run.advancePx(), plain * 0.001);
        } else {
          assertTrue(run.advancePx() > plain, "bars widen it");
        }
      }
    }
  }

  /** Bars as thick as the stem, measured on the drawn outline by sections through it. */
  @Test
  void theBarsAreAsThickAsTheStem() {
    Face plain = Sample.set(SHELF, "en", "ILSE: In.").get(0).type().face();
    Face barred = plain.with(Ornament.BARRED_I);
    int glyph = barred.shape("I".toCharArray(), 0, 1, false).glyph(0);
    Ink ink = barred.ink(glyph, 0);
    Area letter = new Area(barred.outline(glyph, 0));
    double middle = (ink.top() + ink.bottom()) / 2;
    double stem = across(letter, new Rectangle2D.Double(-5000, -middle - 1, 9999, 2)).getWidth();
    double side = ink.left() + 0.15 * (ink.right() - ink.left());
    Rectangle2D bars = across(letter, new Rectangle2D.Double(side, -5000, 2, 5000 - middle));
    assertEquals(stem, bars.getHeight(), stem * 0.15);
    assertEquals(plain.ink(glyph, 0).left(), ink.left(), 1);
    assertEquals(plain.ink(glyph, 0).top(), ink.top(), 1);
  }

  private static Rectangle2D across(Area letter, Rectangle2D section) {
    Area cut = new Area(section);
    cut.intersect(letter);
    return cut.getBounds2D();
  }
}
