package io.github.readfall.lettering.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.script.Script;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A balloon in a number of lines that a person chose. */
class SettingsTest {

  private static final Typesetter TYPESETTER = new Typesetter(Sample.shelf(), HouseStyle.DEFAULT);
  private static final String WORDS =
      "ILSE: Nobody had turned the wheel since spring, and now it will not stop.";

  private static SetBalloon set(Script script, int lines) {
    BalloonRequest request = BalloonRequest.NOTHING.inLines(OptionalInt.of(lines));
    return TYPESETTER.set(script, Map.of("p1-1", request)).balloons().get(0);
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 4, 5, 6})
  void aBalloonHasTheLinesThatAreAskedFor(int lines) {
    assertEquals(lines, set(Sample.script("en", WORDS), lines).lines().size());
  }

  @Test
  void whatCannotBeIsSetAsUsual() {
    Script script = Sample.script("en", "ILSE: No!");
    assertEquals(1, set(script, 5).lines().size());
  }

  @Test
  void atMostFourSettingsAreOfferedOneOfThemTheUsual() {
    Script script = Sample.script("en", WORDS);
    SetBalloon usual = TYPESETTER.set(script).balloons().get(0);
    List<SetBalloon> settings = TYPESETTER.settings(usual, script);
    List<Integer> lines = settings.stream().map(set -> set.lines().size()).toList();
    assertEquals(lines.stream().distinct().sorted().toList(), lines);
    assertTrue(lines.size() > 1 && lines.size() <= 4, lines.toString());
    assertTrue(lines.contains(usual.lines().size()));
    settings.forEach(
        set -> assertEquals(set.box(), set(script, set.lines().size()).box(), "the same again"));
  }
}
