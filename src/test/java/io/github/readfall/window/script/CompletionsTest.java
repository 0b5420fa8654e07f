package io.github.readfall.window.script;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Manner;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptReader;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompletionsTest {

  private static final String SCRIPT =
      """
      Cast: Ilse, Old Wouter (elder)

      SCENE Mill

      PANEL 4
      Rain.

      MILLER (off): Who?
      MILLER: Who?
      SFX: TOK

      """;

  @ParameterizedTest(name = "<{0}>")
  @CsvSource(
      delimiter = '|',
      value = {
        "''            | ILSE: ;OLD WOUTER: ;MILLER: ;CAPTION: ;SFX: ;PANEL 5  ;SCENE ",
        "'IL'          | ILSE: ",
        "'mi'          | MILLER: ",
        "'ILSE'        | ILSE: ",
        "'PA'          | PANEL 5  ",
        "'ILSE (wh'    | whisper",
        "'ILSE (off, d'| drawn",
        "'ILSE (off'   | ''",
        "'PANEL 5  ta' | tall",
        "'PANEL 5  long shot, b' | beside previous",
        "'The mi'      | ''",
        "'ILSE: mi'    | ''"
      })
  void offersWhatCanBeWrittenThere(String before, String offered) {
    ScriptArea area = new ScriptArea();
    Completer completer = new Completer(area);
    completer.know(completions());
    area.script().become(SCRIPT + before);
    area.setCaretPosition(area.script().getLength());
    assertEquals(offered.strip(), written(completer.suggestions(completer.slot())).strip());
  }

  private static Completions completions() {
    return Completions.of(read(SCRIPT), HouseStyle.DEFAULT);
  }

  private static Script read(String text) {
    return new ScriptReader().read(text, Keywords.ENGLISH).script();
  }

  private static String written(List<Suggestion> suggestions) {
    return suggestions.stream().map(Suggestion::text).collect(Collectors.joining(";"));
  }

  @Test
  void offersVoicesInTheCast() {
    assertEquals(List.of("elder"), completions().voices());
  }

  @Test
  void offersRenamedWords() {
    Keywords spanish =
        new Keywords("VIÑETA", "ESCENA", "CARTELA", "ONO", Map.of("grito", Manner.SHOUT));
    Script script = new ScriptReader().read("ESCENA\nVIÑETA 1\n\n", spanish).script();
    ScriptArea area = new ScriptArea();
    Completer completer = new Completer(area);
    completer.know(Completions.of(script, HouseStyle.DEFAULT));
    area.script().readBy(spanish);
    area.script().become("ESCENA\nVIÑETA 1\n\n");
    area.setCaretPosition(area.script().getLength());
    assertEquals(
        "CARTELA: ;ONO: ;VIÑETA 2  ;ESCENA ", written(completer.suggestions(completer.slot())));
    area.script().become("ESCENA\nVIÑETA 1\nPIM (gr");
    area.setCaretPosition(area.script().getLength());
    assertEquals("grito", written(completer.suggestions(completer.slot())));
  }

  @ParameterizedTest(name = "{0} line {1}")
  @CsvSource({
    "'PANEL 1\n\nPANEL 2\n\n', 5, 3",
    "'PANEL 1\n\nPANEL 2\n\n', 2, 2",
    "'PANEL 7\n\nPANEL\n\n', 5, 9",
    "'PANEL\n\nPANEL\n\n', 5, 0",
    "'SCENE Mill\n', 2, 1"
  })
  void countsPanelsOn(String text, int line, int next) {
    assertEquals(next, Completions.nextPanel(read(text), line));
  }
}
