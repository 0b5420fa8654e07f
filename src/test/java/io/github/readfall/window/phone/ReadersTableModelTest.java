package io.github.readfall.window.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.viewing.Audit;
import io.github.readfall.base.viewing.LetterKind;
import io.github.readfall.cli.Ran;
import io.github.readfall.job.Proofer;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.font.OpenFaces;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The readers' table says what the audit on the command line says of the same letters. */
class ReadersTableModelTest {

  private static final String SCRIPT =
      """
      Title: Ebb
      Language: %s
      Cast: Ilse, Wouter

      PANEL 1

      ILSE: %s
      WOUTER (whisper): %s
      """;

  private final Path folder;

  ReadersTableModelTest(@TempDir Path folder) {
    this.folder = folder;
  }

  private Path script(String language, String words, String lettering) throws Exception {
    Files.createDirectories(folder.resolve("ebb"));
    Files.writeString(
        folder.resolve("series.toml"),
        """
        [phones.pocket]
        width-dp = 360
        height-dp = 640
        distance-mm = 300

        [phones.large]
        width-dp = 430
        height-dp = 932

        """
            + lettering);
    return Files.writeString(
        folder.resolve("ebb").resolve("script.txt"), SCRIPT.formatted(language, words, words));
  }

  private static String voices(boolean capitals) {
    String voice = "face = \"Kalam\"\ncapitals = " + capitals + "\n";
    return "[voices.ILSE]\n" + voice + "[voices.WOUTER]\n" + voice;
  }

  private static SetEpisode set(Path script) throws Exception {
    FontShelf faces = OpenFaces.shelf();
    return new Proofer(faces, () -> 0).check(EpisodeFiles.at(script).get(0)).galley().set();
  }

  private static List<JsonNode> rows(Audit audit, Path script) {
    String kind = audit.kind() == LetterKind.SYLLABLE ? "ideograph" : audit.kind().word();
    Ran ran = Ran.of("check", "--" + kind + "-px", audit.heightPx(), "--json", script);
    JsonNode report = JsonMapper.builder().build().readTree(ran.out());
    return report.at("/audit/0/rows").valueStream().toList();
  }

  @ParameterizedTest
  @CsvSource({
    "en, It turns again., true, capital",
    "en, It turns again., false, x-height",
    "ko, 다시 세고 있다., true, syllable"
  })
  void itHasTheNumbersOfTheAudit(String language, String words, boolean capitals, String kind)
      throws Exception {
    Path script = script(language, words, voices(capitals));
    ReadersTableModel model = new ReadersTableModel();
    model.show(set(script));
    Audit audit = model.audit().orElseThrow();
    List<JsonNode> rows = rows(audit, script);
    assertEquals(kind, audit.kind().word());
    assertEquals(rows.size(), model.getRowCount());
    assertEquals(2 + 8 * 3, model.getRowCount());
    Set<String> verdicts = new HashSet<>();
    for (int i = 0; i < rows.size(); i++) {
      JsonNode said = rows.get(i);
      ReadersTableModel.Row row = model.row(i);
      assertEquals(said.has("phone"), row.isOwn());
      assertEquals(said.path("widthDp").asDouble(), row.seen().phone().widthDp(), 1e-9);
      assertEquals(said.path("distanceMm").asDouble(), row.seen().phone().distanceMm(), 1e-9);
      assertEquals(said.path("arcmin").asDouble(), row.seen().arcmin(), 0.001);
      assertEquals(said.path("passes").asBoolean(), row.seen().passes());
      double shown = Double.parseDouble(model.getValueAt(i, 2).replace("\u2032", ""));
      assertTrue(shown <= said.path("arcmin").asDouble() + 0.001 && shown > 0, "cut off");
      assertEquals(said.path("arcmin").asDouble(), shown, 0.1001);
      assertEquals(!row.seen().passes(), model.getValueAt(i, 4).equals("too small"));
      verdicts.add(model.getValueAt(i, 4));
    }
    assertTrue(verdicts.size() > 1, "nothing to tell apart: " + verdicts);
  }

  @Test
  void theSmallestBalloonIsTheWhisperedOne() throws Exception {
    Path script = script("en", "It turns again.", "[manners.whisper]\nsize = 0.8\n");
    ReadersTableModel model = new ReadersTableModel();
    model.show(set(script));
    assertEquals("p1-2", model.audit().orElseThrow().balloon());
    assertEquals("Wouter: It turns again.", model.getValueAt(0, 5));
    assertEquals("pocket, 360 dp", model.getValueAt(0, 0));
    assertEquals("360 dp, near reader", model.getValueAt(2, 0));
    assertEquals("292 mm", model.getValueAt(2, 1));
  }

  @Test
  void aStripWithoutTextHasNoRows() throws Exception {
    Files.createDirectories(folder.resolve("still"));
    Path script =
        Files.writeString(folder.resolve("still").resolve("script.txt"), "PANEL 1\nWater.\n");
    ReadersTableModel model = new ReadersTableModel();
    model.show(set(script));
    assertEquals(0, model.getRowCount());
  }
}
