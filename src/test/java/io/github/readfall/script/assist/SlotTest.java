package io.github.readfall.script.assist;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.script.Keywords;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class SlotTest {

  private static final Map<String, String> ABOVE =
      Map.of(
          "top", "",
          "cast", "Cast: Ilse,\n",
          "scene", "SCENE Mill\n",
          "panel", "Cast: Ilse\nPANEL\n");

  /**
   * In the table a vertical bar would part columns: the place is the end of the text in {@code <>}.
   */
  @ParameterizedTest(name = "{0} {1}")
  @CsvFileSource(resources = "/script/slots.txt", delimiter = '|', quoteCharacter = '`')
  void saysWhatMayBeWrittenAtAPlace(String above, String before, String kind, String typed) {
    String text = ABOVE.getOrDefault(above, "");
    String line = before.substring(1, before.length() - 1);
    ScriptLines lines = ScriptLines.read(text + line, Keywords.ENGLISH);
    Slot slot = lines.slot(text.split("\n", -1).length, line);
    assertEquals(new Slot(SlotKind.valueOf(kind), typed == null ? "" : typed), slot);
  }
}
