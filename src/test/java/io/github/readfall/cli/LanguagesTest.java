package io.github.readfall.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sending out and taking in, as a person does it. */
class LanguagesTest {

  private static final String SCRIPT =
      """
      Title: Low Water

      PANEL 1
      A ferry on mud.
      CAPTION: Nobody had rowed since spring.
      ILSE (thought): It is *counting* again.

      PANEL 2
      BOTH: No.
      ILSE: So be it.
      """;

  private final Path home;
  private final Path episode;
  private final Path xliff;
  private final Path csv;
  private final Path kept;

  LanguagesTest(@TempDir Path home) throws IOException {
    this.home = home;
    episode = Files.createDirectory(home.resolve("ep01"));
    Files.writeString(episode.resolve("script.txt"), SCRIPT);
    xliff = home.resolve("to-de.xlf");
    csv = home.resolve("to-de.csv");
    kept = episode.resolve("lang/de.xlf");
  }

  private Ran out(Object... more) {
    return Ran.of(
        List.of(List.of("languages", "out", episode, "--language", "de"), List.of(more)).stream()
            .flatMap(List::stream)
            .toArray());
  }

  private Ran in(Object... more) {
    return Ran.of(
        List.of(List.of("languages", "in", episode), List.of(more)).stream()
            .flatMap(List::stream)
            .toArray());
  }

  private static void change(Path file, String from, String to) throws IOException {
    String text = Files.readString(file);
    assertTrue(text.contains(from), from);
    Files.writeString(file, text.replace(from, to));
  }

  private void translate() throws IOException {
    assertEquals(0, out("--to", xliff).status());
    String text = Files.readString(xliff);
    Files.writeString(
        xliff,
        text.replaceAll(
                "state=\"initial\"(>\\s*<source>)(.*?)</source>",
                "state=\"translated\"$1$2</source><target>$2</target>")
            .replace("<target>No.</target>", "<target>Nein.</target>"));
  }

  private static void assertFitsTheSchema(String json) throws IOException {
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(Path.of("docs/report.schema.json")), InputFormat.JSON);
    assertEquals(List.of(), schema.validate(json, InputFormat.JSON));
  }

  @Test
  void aTranslationGoesOutAndComesBack() throws IOException {
    translate();
    Ran ran = in(xliff);
    assertEquals(0, ran.status(), ran.err());
    assertTrue(ran.out().contains("wrote " + kept), ran.out());
    assertArrayEquals(Files.readAllBytes(xliff), Files.readAllBytes(kept));
    assertEquals(0, out("--to", xliff, "--replace").status());
    assertArrayEquals(Files.readAllBytes(kept), Files.readAllBytes(xliff), "out again");
    assertTrue(in(xliff).out().contains("nothing changed"), "in again");
    assertFalse(Files.exists(episode.resolve("lang/de.previous.xlf")));
    assertEquals(SCRIPT, Files.readString(episode.resolve("script.txt")));
  }

  @Test
  void whatWasThereBeforeIsKept() throws IOException {
    translate();
    in(xliff);
    byte[] before = Files.readAllBytes(kept);
    change(xliff, "Nein.", "Ach nein.");
    assertEquals(0, in(xliff).status());
    assertArrayEquals(before, Files.readAllBytes(episode.resolve("lang/de.previous.xlf")));
    assertTrue(Files.readString(kept).contains("Ach nein."));
  }

  @Test
  void aTableGoesOutAndComesBackWithItsColumns() throws IOException {
    assertEquals(0, out("--to", csv, "--format", "csv").status());
    byte[] bytes = Files.readAllBytes(csv);
    assertEquals(0xEF, bytes[0] & 0xFF, "UTF-8 with a byte order mark, for spreadsheets");
    String text = new String(bytes, StandardCharsets.UTF_8);
    assertEquals(text.lines().count(), text.split("\r\n", -1).length - 1);
    String done =
        text.replace("note\r\n", "note,who\r\n")
            .replaceAll(",BOTH,,No[.],,(\\d*),(\\d*),initial,", ",BOTH,,No.,Nein.,$1,$2,final,")
            .replaceAll("(?m)([^e])\r\n(?=p|\\z)", "$1,me\r\n")
            .replace("note,who,me", "note,who")
            .replace(',', ';');
    Files.writeString(csv, done);
    assertTrue(in(csv).isRefusedInOneSentence(), "a table has no language");
    Ran ran = in(csv, "--language", "de");
    assertEquals(0, ran.status(), ran.err());
    assertTrue(ran.out().contains("3 of 4 cues are not translated"), ran.out());
    assertTrue(Files.readString(kept).contains("state=\"final\""), Files.readString(kept));
    assertEquals(0, out("--to", csv, "--format", "csv", "--replace").status());
    String again = Files.readString(csv);
    assertTrue(
        again.startsWith(
            "\uFEFFid,panel,speaker,manner,source,target,comfortable,most,state,note,who"));
    assertTrue(again.matches("(?s).*BOTH,,No[.],Nein[.],\\d*,\\d*,final,.*"), again);
    assertTrue(again.lines().skip(1).allMatch(line -> line.endsWith(",me")), again);
  }

  @Test
  void aChangedScriptTakesItsTranslationBack() throws IOException {
    translate();
    in(xliff);
    Path script = episode.resolve("script.txt");
    change(script, "BOTH: No.", "ILSE: Wait for me.\nBOTH: No.");
    change(script, "Nobody had rowed since spring.", "Nobody had rowed here since spring.");
    Ran ran = in(xliff, "--json");
    assertEquals(0, ran.status(), ran.err());
    assertFitsTheSchema(ran.out());
    assertTrue(ran.out().contains("\"language/stale\""), ran.out());
    assertTrue(ran.out().contains("\"files\""), ran.out());
    assertTrue(ran.out().contains("1 of 5 cues are not translated"), ran.out());
    assertTrue(Files.readString(kept).contains("Nein."));
    assertEquals(1, in(xliff, "--fail-on", "note").status());
  }

  @Test
  void eachBalloonIsDrawnAndNamed() throws IOException {
    Ran ran = out("--to", xliff, "--pictures", "--json");
    assertEquals(0, ran.status(), ran.err());
    assertFitsTheSchema(ran.out());
    BufferedImage balloon = ImageIO.read(home.resolve("to-de-balloons/p1-2.png").toFile());
    assertTrue(balloon.getWidth() > 200 && balloon.getHeight() > 100);
    assertTrue(Files.readString(xliff).contains(">to-de-balloons/p1-2.png</note>"));
    try (var files = Files.list(home.resolve("to-de-balloons"))) {
      assertEquals(4, files.count());
    }
  }

  @Test
  void anotherFileIsNotWrittenOver() throws IOException {
    Files.writeString(xliff, "mine");
    assertTrue(out("--to", xliff).isRefusedInOneSentence());
    assertEquals("mine", Files.readString(xliff));
    Ran script = out("--to", episode.resolve("script.txt"), "--replace");
    assertTrue(script.isRefusedInOneSentence(), script.err());
    assertEquals(SCRIPT, Files.readString(episode.resolve("script.txt")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "germanic tongue", "../de", "xx"})
  void noLanguageOrTheScriptsOwnIsRefused(String tag) {
    Ran ran = Ran.of("languages", "out", episode, "--language", tag, "--to", xliff);
    assertTrue(ran.isRefusedInOneSentence(), ran.err());
    assertFalse(Files.exists(xliff));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          srcLang="en"|srcLang="fr"|translates from fr, and the script is in en
          trgLang="de"|trgLang="fr-"|line 2: trgLang is "fr-"
          version="2.1"|version="1.2"|line 2: it is XLIFF 1.2
          <file |<!DOCTYPE a><file |line 3: it declares a document type
          state="translated"|state="done"|state is "done"
          """)
  void aSpoiltFileIsRefusedAndNothingIsWritten(String from, String to, String sentence)
      throws IOException {
    translate();
    change(xliff, from, to);
    Ran ran = in(xliff);
    assertTrue(ran.isRefusedInOneSentence(), ran.err());
    assertTrue(ran.err().contains(sentence) && ran.err().contains("to-de.xlf"), ran.err());
    assertFalse(Files.exists(kept));
  }

  @Test
  void aKeptFileThatCannotBeReadIsNotWrittenOver() throws IOException {
    translate();
    Files.createDirectories(kept.getParent());
    Files.writeString(kept, "<half");
    Ran ran = in(xliff);
    assertTrue(ran.isRefusedInOneSentence(), ran.err());
    assertEquals("<half", Files.readString(kept));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "nothing", "id,source\n", "{}", "\u0000\u0001"})
  void whatIsNeitherIsRefused(String text) throws IOException {
    Path odd = Files.writeString(home.resolve("odd.txt"), text);
    Ran ran = in(odd, "--language", "de");
    assertTrue(ran.isRefusedInOneSentence(), ran.err());
  }

  @Test
  void aCommandWithoutOneBelowItIsRefused() {
    assertTrue(Ran.of("languages").isRefusedInOneSentence());
    assertTrue(Ran.of("languages", "in", home.resolve("none"), xliff).isRefusedInOneSentence());
    assertTrue(in(home.resolve("none.xlf")).isRefusedInOneSentence());
  }

  @Test
  void aBareScriptHasItsTranslationsBesideIt() throws IOException {
    translate();
    Ran ran = Ran.of("languages", "in", episode.resolve("script.txt"), xliff);
    assertEquals(0, ran.status(), ran.err());
    assertTrue(Files.exists(kept));
  }

  @Test
  void whatGoesOutSaysHowMuchGoesIn() throws IOException {
    assertEquals(0, out("--to", csv, "--format", "csv").status());
    String row =
        Files.readString(csv).lines().filter(line -> line.contains(",No.,")).findFirst().orElse("");
    assertTrue(row.matches(".*,No[.],,\\d+,\\d+,initial,.*"), row);
    assertEquals(0, out("--to", xliff).status());
    assertTrue(Files.readString(xliff).contains("slr:sizeRestriction="), "no restriction");
  }

  @Test
  void translationsAreFittedAndDrawn() throws IOException {
    translate();
    in(xliff);
    Path matrix = episode.resolve("matrix.svg");
    Path strips = episode.resolve("strips");
    Ran ran =
        Ran.of(
            "languages",
            "fit",
            episode,
            "--picture",
            matrix,
            "--strips",
            strips,
            "--fail-on",
            "never");
    assertEquals(0, ran.status(), ran.err());
    assertTrue(ran.out().contains("larger balloon"), ran.out());
    assertTrue(Files.readString(matrix).startsWith("<?xml"), "no picture");
    assertTrue(Files.size(strips.resolve("de.png")) > 1000, "no strip");
  }

  @Test
  void withoutATranslationThereIsNothingToFitButStandIns() {
    Ran none = Ran.of("languages", "fit", episode);
    assertTrue(none.isRefusedInOneSentence(), none.err());
    Ran standIn = Ran.of("languages", "fit", episode, "--languages", "fi,ar", "--stand-in");
    assertTrue(standIn.out().contains("(expected)"), standIn.out());
  }

  @Test
  void balloonsForSeveralLanguagesSayWhoDecided() {
    Ran ran = Ran.of("fit", episode, "--languages", "fi,ko", "--lengths", "w3c");
    assertTrue(ran.out().contains("decided by"), ran.out());
    assertTrue(ran.out().contains("(expected)"), ran.out());
    Ran unknown = Ran.of("fit", episode, "--languages", "not_a_tag");
    assertTrue(unknown.isRefusedInOneSentence(), unknown.err());
    Ran untold = Ran.of("fit", episode, "--languages", "sw");
    assertTrue(untold.isRefusedInOneSentence(), untold.err());
  }

  @Test
  void aTableForEnglishIsOnlyAGuessForAnotherSourceAndSaysSo(@TempDir Path folder)
      throws IOException {
    Path german =
        Files.writeString(
            folder.resolve("script.txt"), "Language: de\n\nPANEL 1\n\nILSE: Das Rad dreht sich.\n");
    for (String command : List.of("fit", "plan", "place")) {
      Ran guessed =
          Ran.of(command, german.toString(), "--languages", "fr", "--lengths", "w3c", "--json");
      assertEquals(1, count(guessed.out(), "\"language/guess\""), command + guessed.err());
      Ran measured = Ran.of(command, german.toString(), "--languages", "fr", "--json");
      assertEquals(0, count(measured.out(), "\"language/guess\""), command + measured.err());
    }
    Ran english = Ran.of("fit", episode, "--languages", "fi", "--lengths", "w3c", "--json");
    assertEquals(0, count(english.out(), "\"language/guess\""), english.err());
  }

  private static int count(String text, String part) {
    return text.split(Pattern.quote(part), -1).length - 1;
  }
}
