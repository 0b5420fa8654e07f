package io.github.readfall.languages.translate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.script.Keywords;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptReader;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables by RFC 4180, and what spreadsheets make of them (common practice). */
class TableReaderTest {

  private static final String HEAD = "id,speaker,source,target,state\r\n";

  private static TranslationTable.Row only(String text) throws TableFault {
    List<TranslationTable.Row> rows = TableReader.read(text).rows();
    assertEquals(1, rows.size());
    return rows.get(0);
  }

  /** RFC 4180, section 2, rules 1 to 7. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        HEAD + "p1-1,A,Hm,Na,final",
        HEAD + "p1-1,A,Hm,Na,final\r\n",
        HEAD + "\"p1-1\",\"A\",\"Hm\",\"Na\",\"final\"\r\n",
        "\uFEFF" + HEAD + "p1-1,A,Hm,Na,final\r\n",
        "id;speaker;source;target;state\r\np1-1;A;Hm;Na;final\r\n",
        "id\tspeaker\tsource\ttarget\tstate\np1-1\tA\tHm\tNa\tfinal\n",
        "id,speaker,source,target,state\rp1-1,A,Hm,Na,final\r",
        "id,speaker,source,target,state\np1-1,A,Hm,Na,final\n\n\n",
        "ID,Speaker,\"Source\",TARGET,State\np1-1,A,Hm,Na,FINAL",
        "target,source,id,state,speaker\nNa,Hm,p1-1,final,A\n"
      })
  void theSameTableIsReadHoweverItIsWritten(String text) throws TableFault {
    TranslationTable.Row row = only(text);
    assertEquals("p1-1", row.id());
    assertEquals(Optional.of("A"), row.speaker());
    assertEquals("Hm", row.source());
    assertEquals("Na", row.target());
    assertEquals(Optional.of(State.FINAL), row.state());
  }

  @Test
  void cellsAreReadAsTheyAreMeant() throws TableFault {
    Map<String, String> cells =
        Map.of(
            "\"a, b\"", "a, b",
            "\"say \"\"no\"\"\"", "say \"no\"",
            "\"two\r\nlines\"", "two lines",
            "\"\"", "",
            "\"=1+1\"", "=1+1",
            "-- so", "-- so",
            "*so* / _so_", "*so* / _so_");
    for (Map.Entry<String, String> cell : cells.entrySet()) {
      String row = HEAD + "1,A,x," + cell.getKey() + ",\r\n";
      assertEquals(cell.getValue(), only(row).target());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          id,source,target~1,a,b~2,a|line 3: the row has 2 cells, and there are 3 columns
          id,source,target~1,a,b,c|line 2: the row has 4 cells, and there are 3 columns
          id,source,target~1,"a~b",c~1,d,e|line 4: the id "1" is there twice
          id,source~1,a|line 1: the first line does not name the columns id, source and target
          nothing|line 1: the first line does not name the columns
          id,source,target,source~1,a,b,c|line 1: two columns are named "source"
          id,source,target,state~1,a,b,done|line 2: state is "done"
          id,source,target~1,"a"x,b|quotes do not match
          """)
  void aSpoiltTableIsRefusedWithItsLine(String text, String sentence) {
    String table = text.replace('~', '\n');
    String refusal = assertThrows(TableFault.class, () -> TableReader.read(table)).in("de.csv");
    assertTrue(refusal.startsWith("de.csv") && refusal.contains(sentence), refusal);
  }

  @Test
  void anEmptyTableIsRefused() {
    assertThrows(TableFault.class, () -> TableReader.read(""));
  }

  @Test
  void columnsThatAreNotKnownAreKept() throws TableFault {
    TranslationTable.Row row = only("id,source,target,Who,note\n1,a,b,me,x\n");
    assertEquals(Map.of("who", "me"), row.others());
    assertEquals(Optional.empty(), row.speaker());
  }

  @Test
  void whatIsWrittenIsReadAgain() throws TableFault {
    Script script =
        new ScriptReader()
            .read(
                "PANEL 1\nRain, \"rain\".\nA (whisper): *So*, / \"now\"?\n\nB: =1+1; no\n",
                Keywords.ENGLISH)
            .script();
    Translation translation =
        new Translation(
            "de",
            script.cues().stream()
                .map(
                    cue ->
                        new TranslatedCue(
                            cue, "@" + cue.text().raw(), State.REVIEWED, Optional.empty()))
                .toList());
    String text =
        TableWriter.write(
            script,
            translation,
            Map.of(
                "p1-1",
                new CueContext(Optional.of(new Budget(9, 12)), Optional.empty(), Optional.empty())),
            Map.of("p1-2", Map.of("who", "me")));
    assertTrue(
        text.startsWith(
            "\uFEFFid,panel,speaker,manner,source,target,comfortable,most,state,note,who\r\n"
                + "p1-1,1,A,whisper,\"*So*, / \"\"now\"\"?\",\"@*So*, / \"\"now\"\"?\",9,12,reviewed,"),
        text);
    List<TranslationTable.Row> rows = TableReader.read(text).rows();
    assertEquals("@*So*, / \"now\"?", rows.get(0).target());
    assertEquals("=1+1; no", rows.get(1).source());
    assertEquals("@=1+1; no", rows.get(1).target());
    assertEquals("me", rows.get(1).others().get("who"));
  }
}
