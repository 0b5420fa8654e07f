package io.github.readfall.lettering.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.text.TextLine;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Words that part only where the writer allows it. */
class SoftHyphenTest {

  private static final FontShelf SHELF = Sample.shelf();

  @Test
  void aLineThatEndsWithOneShowsAHyphen() {
    List<String> lines =
        lines("ILSE: M\u00fchlen\u00adrad\u00adgeschwindigkeits\u00admess\u00adger\u00e4t");
    assertTrue(lines.size() > 1, "in one line");
    for (String line : lines.subList(0, lines.size() - 1)) {
      assertTrue(line.endsWith("-"), line);
    }
    assertEquals(
        "M\u00dcHLENRADGESCHWINDIGKEITSMESSGER\u00c4T", String.join("", lines).replace("-", ""));
  }

  @Test
  void oneThatIsNotNeededIsNotSeen() {
    assertEquals(List.of("JAWOHL!"), lines("ILSE: Ja\u00adwohl!"));
  }

  @Test
  void theHyphenIsInsideTheBalloon() {
    SetBalloon balloon =
        Sample.set(SHELF, "de", "ILSE: Dampf\u00adschiff\u00adfahrts\u00adkapit\u00e4n!").get(0);
    for (SetLine line : balloon.lines()) {
      TextLine text = line.line();
      assertTrue(line.xPx() >= balloon.marginPx(), text.text());
      assertTrue(
          line.xPx() + text.advancePx() <= balloon.box().width() - balloon.marginPx(), text.text());
    }
  }

  private static List<String> lines(String cue) {
    return Sample.set(SHELF, "de", cue).get(0).lines().stream()
        .map(line -> line.line().text())
        .toList();
  }
}
