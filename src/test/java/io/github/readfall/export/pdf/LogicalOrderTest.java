package io.github.readfall.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.draw.Mark;
import io.github.readfall.lettering.typeset.Sample;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetLine;
import io.github.readfall.type.text.PlacedRun;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LogicalOrderTest {

  private static List<Mark.Glyphs> marks(SetLine line) {
    return line.line().runs().stream()
        .map(run -> new Mark.Glyphs(run, new XY(0, 0), new Colour(0)))
        .toList();
  }

  /** Runs from the left of what is read from the right; the text is that of the script. */
  @ParameterizedTest
  @CsvSource({
    "ar, عاد الماء 12 مرة إلى Ossel اليوم",
    "he, המים חזרו 12 פעמים אל Ossel היום",
    "en, It is *counting* again",
    "de, Schiff 12 heißt مركب heute",
  })
  void aLineIsFoundInTheTextItIsPartOf(String language, String words) {
    SetBalloon balloon = Sample.set(Sample.shelf(), language, "A: " + words).get(0);
    String all =
        String.join(" ", balloon.lines().stream().map(line -> line.line().text()).toList());
    for (SetLine line : balloon.lines()) {
      assertEquals(line.line().text(), LogicalOrder.of(marks(line), all));
    }
  }

  @Test
  void whatIsNotFoundIsSaidAsItStands() {
    SetBalloon balloon = Sample.set(Sample.shelf(), "en", "A: One *two*").get(0);
    List<Mark.Glyphs> marks = balloon.lines().stream().flatMap(l -> marks(l).stream()).toList();
    String seen =
        String.join("", marks.stream().map(Mark.Glyphs::run).map(PlacedRun::text).toList());
    assertEquals(seen, LogicalOrder.of(marks, "something else"));
  }
}
