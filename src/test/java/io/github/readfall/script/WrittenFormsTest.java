package io.github.readfall.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.script.assist.ScriptLines;
import io.github.readfall.script.read.ReadScript;
import io.github.readfall.script.read.ScriptReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The forms in which people write headings and cues, and the prose that looks like them. */
class WrittenFormsTest {

  /** What is above the line that a row of the table is about. */
  private static final Map<String, String> ABOVE =
      Map.of(
          "bare", "PANEL 9\n",
          "cast", "Cast: Mara, Otis, Old Wouter\nPANEL 9\n",
          "heard", "PANEL 9\nMARA: Here.\nOTIS: There.\n\n",
          "cue", "PANEL 9\nMARA: Here is the\n",
          "dashed", "PANEL 9\nMARA - Here.\n",
          "renamed", "VIÑETA 9\n");

  private static final Pattern CODE = Pattern.compile("`([^`]+)`");

  private static final Keywords SPANISH =
      new Keywords("VIÑETA", "ESCENA", "CARTELA", "ONO", Map.of());

  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(resources = "/script/written-forms.txt", delimiter = '|', quoteCharacter = '`')
  void readsWhatPeopleWrite(String above, String line, String expected) {
    Keywords keywords = above.equals("renamed") ? SPANISH : Keywords.ENGLISH;
    String before = ABOVE.getOrDefault(above, "");
    String text = before + line.replace("\\n", "\n") + "\n";
    int number = before.split("\n", -1).length;
    ReadScript read = new ScriptReader().read(text, keywords);
    assertEquals(expected, dump(read, number));
    LineKind kind = read.script().lines().get(number - 1).kind();
    assertEquals(kind, ScriptLines.read(text, keywords).kind(number), "in the editor");
  }

  @Test
  void everyFormOnThePageIsInTheTable() throws IOException {
    String page = Files.readString(Path.of("docs/script.md"));
    String tables = page.substring(page.indexOf("## What is read"), page.indexOf("## Signs"));
    List<String> rows = Files.readAllLines(Path.of("src/test/resources/script/written-forms.txt"));
    List<String> lines = rows.stream().map(row -> row.split("\\||\\\\n", -1)[1]).toList();
    List<String> forms =
        tables
            .lines()
            .filter(row -> row.startsWith("| `"))
            .map(row -> row.split(" \\| ", -1)[0])
            .flatMap(cell -> CODE.matcher(cell).results())
            .map(code -> code.group(1))
            .toList();
    assertTrue(forms.size() > 25, forms.toString());
    assertEquals(List.of(), forms.stream().filter(form -> !lines.contains(form)).toList());
  }

  private static String dump(ReadScript read, int line) {
    Script script = read.script();
    Stream<String> panels =
        script.panels().stream()
            .filter(panel -> panel.line() == line)
            .map(panel -> "panel [" + panel.label() + "] [" + panel.heading() + "]");
    Stream<String> scenes =
        script.scenes().stream()
            .filter(scene -> scene.line() == line)
            .map(scene -> "scene [" + scene.heading() + "]");
    Stream<String> cues =
        script.cues().stream().filter(cue -> cue.line() == line).map(WrittenFormsTest::cue);
    LineKind kind = script.lines().get(line - 1).kind();
    String other =
        kind == LineKind.DESCRIPTION || kind == LineKind.CUE_TEXT
            ? kind.name().toLowerCase(Locale.ROOT)
            : "";
    return Stream.of(panels, scenes, cues, Stream.of(other), findings(read.findings(), line))
        .flatMap(parts -> parts)
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining(" "));
  }

  private static String cue(Cue cue) {
    List<String> manners = cue.manners().stream().map(Manner::word).toList();
    return String.join(" + ", cue.speakers())
        + (cue.kind() == CueKind.DIALOGUE ? "" : " " + cue.kind())
        + (manners.isEmpty() ? "" : " " + manners)
        + " <"
        + cue.text().plain()
        + ">";
  }

  private static Stream<String> findings(List<Finding> findings, int line) {
    return findings.stream()
        .filter(finding -> finding.where().line().orElse(0) == line)
        .map(finding -> finding.severity().word() + " " + finding.rule());
  }
}
