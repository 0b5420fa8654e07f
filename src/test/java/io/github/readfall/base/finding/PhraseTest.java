package io.github.readfall.base.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PhraseTest {

  /** One balloon, 200 wide and 100 high; any other has no place. */
  private static final Phrase.Balloons SHOWN =
      new Phrase.Balloons() {
        @Override
        public String name(String id) {
          return "the caption in panel " + id.charAt(1);
        }

        @Override
        public Optional<Box> box(String id) {
          return id.equals("p1-1") ? Optional.of(new Box(400, 1000, 200, 100)) : Optional.empty();
        }
      };

  private static String inWindow(Fix fix) {
    return fix.sentence().inWindow(SHOWN);
  }

  @ParameterizedTest
  @CsvSource({
    "400, 1000, a little",
    "400, 990, up by 10 % of its height",
    "300, 1000, to the left by 50 % of its width",
    "530, 1066, down by 66 % of its height and to the right by 65 % of its width",
    "1000, 1000.4, to the right by 300 % of its width"
  })
  void aPlaceIsADirectionInTheWindow(double x, double y, String direction) {
    Fix move = new Fix.Move("p1-1", new XY(x, y));
    assertEquals("Move the caption in panel 1 " + direction + ".", inWindow(move));
    String reported = "Move p1-1 to " + Math.round(x) + ", " + Math.round(y) + ".";
    assertEquals(reported, move.sentence().inReports());
  }

  @Test
  void everyFixIsSaidWithoutIdsAndCoordinates() {
    Fix tail = new Fix.TailTo("p2-1", 0, new XY(70, 80));
    Fix size = new Fix.Resize("p2-1", new Box(1, 2, 300, 200));
    assertEquals("Move the caption in panel 2.", inWindow(new Fix.Move("p2-1", new XY(7, 8))));
    assertEquals("End the tail of the caption in panel 2 elsewhere.", inWindow(tail));
    assertEquals("Make the caption in panel 2 300 × 200 px.", inWindow(size));
    assertEquals("Move the cut up by 40 px.", inWindow(new Fix.MoveCut(2000, 1960)));
    assertEquals("Move the cut down by 40 px.", inWindow(new Fix.MoveCut(1960, 2000)));
    assertEquals("End the tail of p2-1 at 70, 80.", tail.sentence().inReports());
    assertEquals(
        "Move the cut at 1960 to 2000.", new Fix.MoveCut(1960, 2000).sentence().inReports());
  }

  @Test
  void aSentenceThatBeginsWithANameBeginsWithACapital() {
    Phrase empty = Phrase.of("").balloon("p3-2").then(" is empty.");
    assertEquals("The caption in panel 3 is empty.", empty.inWindow(SHOWN));
    assertEquals("p3-2 is empty.", empty.inReports());
  }

  @Test
  void equalPhrasesMakeEqualFindings() {
    Finding one = Finding.of("a/b", Severity.NOTE, Where.everywhere(), said(), Phrase.of(""));
    Finding other = Finding.of("a/b", Severity.NOTE, Where.everywhere(), said(), Phrase.of(""));
    assertEquals(one, other);
    assertEquals(one.inWindow(SHOWN), other.inWindow(SHOWN));
    assertEquals("p1-1 is in series.toml", one.message());
    assertEquals("The caption in panel 1 is in the house style", one.inWindow(SHOWN).message());
  }

  private static Phrase said() {
    return Phrase.of("").balloon("p1-1").then(" is in ").houseStyle();
  }
}
