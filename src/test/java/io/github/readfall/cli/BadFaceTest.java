package io.github.readfall.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A person's own face that is odd or damaged costs a finding, never the episode. */
class BadFaceTest {

  private static final Duration LONG_ENOUGH = Duration.ofSeconds(20);
  private static final Path GOOD = Path.of("fonts-open/pangolin/Pangolin-Regular.ttf");
  private static final Path ARABIC =
      Path.of("fonts-open/noto-naskh-arabic/NotoNaskhArabic-Regular.ttf");
  private static final String SCRIPT =
      """
      Language: en
      Cast: Ilse

      PANEL 1

      ILSE: Good morning, *old* mill. Was it 6:12?
      SFX: KRRANK
      """;

  private final Path series;

  BadFaceTest(@TempDir Path folder) throws IOException {
    this.series = folder;
    Files.createDirectory(folder.resolve("fonts"));
    Files.createDirectory(folder.resolve("ep01"));
    Files.writeString(folder.resolve("ep01/script.txt"), SCRIPT);
    Files.writeString(folder.resolve("series.toml"), "[voices.ILSE]\nface = \"fonts/Mine.ttf\"\n");
  }

  @Test
  void aGoodFaceOfOnesOwnIsUsedWithoutAFinding() throws IOException {
    JsonNode report = fitsWith(Files.readAllBytes(GOOD));
    assertEquals(0, report.path("findings").size());
    assertTrue(faces(report).contains("fonts/Mine.ttf"), faces(report).toString());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 11, 12, 100, 300, 1_000, 20_000})
  void aFileCutOffIsNamedAndAnotherFaceStandsIn(int length) throws IOException {
    isUnusable(fitsWith(Arrays.copyOf(Files.readAllBytes(GOOD), length)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"glyf", "loca", "head", "maxp", "cmap", "hmtx"})
  void aFileWithoutATableItNeedsIsNamed(String table) throws IOException {
    isUnusable(fitsWith(renamed(Files.readAllBytes(GOOD), table, "xxxx")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"GSUB", "GPOS", "OS/2", "name", "post", "GDEF", "hhea", "cmap"})
  void aTableOfRubbishIsNoFault(String table) throws IOException {
    fitsWith(filled(Files.readAllBytes(GOOD), table, (byte) 0xFF));
  }

  @ParameterizedTest
  @ValueSource(strings = {"glyf", "loca", "GSUB", "GPOS", "hmtx", "maxp", "head"})
  void aTableOfZerosIsNoFault(String table) throws IOException {
    fitsWith(filled(Files.readAllBytes(GOOD), table, (byte) 0));
  }

  @Test
  void aFileWithoutLettersIsNamed() throws IOException {
    isUnusable(fitsWith(withField(Files.readAllBytes(GOOD), "maxp", 4, 0)));
  }

  @Test
  void anEmOfNothingIsNoFault() throws IOException {
    for (int em : new int[] {0, 1, 15, 0xFFFF}) {
      fitsWith(withField(Files.readAllBytes(GOOD), "head", 18, em));
    }
  }

  @Test
  void aCapitalHeightOfNothingOrBelowIsNoFault() throws IOException {
    for (int height : new int[] {0, 1, 0x7FFF, 0xFFFF, 0x8000}) {
      fitsWith(withField(Files.readAllBytes(GOOD), "OS/2", 88, height));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"fvar", "COLR", "sbix", "CBDT"})
  void aVariableOrColourFaceIsRefusedByName(String table) throws IOException {
    isUnusable(fitsWith(renamed(Files.readAllBytes(GOOD), "post", table)));
  }

  @Test
  void aCollectionIsRefusedByName() throws IOException {
    byte[] collection = Files.readAllBytes(GOOD);
    System.arraycopy("ttcf".getBytes(StandardCharsets.ISO_8859_1), 0, collection, 0, 4);
    isUnusable(fitsWith(collection));
  }

  @Test
  void wordsInPlaceOfAFaceAreRefused() throws IOException {
    isUnusable(fitsWith("<html>404 Not Found</html>".getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void aFolderOfAFacesNameIsRefused() throws IOException {
    Files.createDirectory(series.resolve("fonts/Mine.ttf"));
    isUnusable(fits());
  }

  @Test
  void aFileInPlaceOfTheFolderOfFacesIsNoFault() throws IOException {
    Files.delete(series.resolve("fonts"));
    Files.writeString(series.resolve("fonts"), "not a folder");
    fits();
  }

  @Test
  void aFaceWithoutLatinLettersIsNoFaultInALatinVoice() throws IOException {
    Files.writeString(
        series.resolve("series.toml"), "[voices.ILSE]\nface = \"Noto Naskh Arabic\"\n");
    assertEquals(2, fits().path("balloons").size());
    JsonNode own = fitsWith(Files.readAllBytes(ARABIC));
    assertEquals(2, own.path("balloons").size());
  }

  @Test
  void aFaceThatKnowsNoLetterAtAllIsNoFault() throws IOException {
    // No encoding record of a platform that is known: the file has letters, but none has a code.
    byte[] file = Files.readAllBytes(GOOD);
    JsonNode report = fitsWith(withField(file, "cmap", 2, 0));
    assertEquals(2, report.path("balloons").size());
  }

  @Test
  void manyFacesAreReadInTime() throws IOException {
    byte[] good = Files.readAllBytes(GOOD);
    for (int i = 0; i < 20; i++) {
      Files.write(series.resolve("fonts/Mine" + i + ".ttf"), good);
    }
    assertEquals(2, fitsWith(good).path("balloons").size());
  }

  private JsonNode fitsWith(byte[] face) throws IOException {
    Files.write(series.resolve("fonts/Mine.ttf"), face);
    return fits();
  }

  private JsonNode fits() {
    return assertTimeoutPreemptively(
        LONG_ENOUGH,
        () -> {
          Ran ran = Ran.of("fit", series.resolve("ep01"), "--json");
          assertTrue(ran.status() <= 1, ran.err());
          assertEquals("", ran.err());
          return JsonMapper.builder().build().readTree(ran.out());
        });
  }

  private static void isUnusable(JsonNode report) {
    List<String> rules =
        report.path("findings").valueStream().map(f -> f.path("rule").asString()).toList();
    assertTrue(rules.contains("font/unusable"), rules.toString());
    assertEquals(2, report.path("balloons").size());
    assertFalse(faces(report).contains("fonts/Mine.ttf"), faces(report).toString());
    report
        .path("findings")
        .forEach(f -> assertTrue(f.path("message").asString().endsWith("."), f.toString()));
  }

  private static List<String> faces(JsonNode report) {
    return report.findValuesAsString("face");
  }

  /** Where a table's entry in the directory is (OpenType specification, "Table Directory"). */
  private static int entry(byte[] file, String table) {
    for (int i = 0; i < ByteBuffer.wrap(file).getShort(4); i++) {
      int at = 12 + 16 * i;
      if (new String(file, at, 4, StandardCharsets.ISO_8859_1).equals(table)) {
        return at;
      }
    }
    throw new AssertionError("the file has no table " + table);
  }

  private static byte[] renamed(byte[] file, String table, String to) {
    System.arraycopy(to.getBytes(StandardCharsets.ISO_8859_1), 0, file, entry(file, table), 4);
    return file;
  }

  private static byte[] filled(byte[] file, String table, byte with) {
    int entry = entry(file, table);
    int start = ByteBuffer.wrap(file).getInt(entry + 8);
    Arrays.fill(file, start, start + ByteBuffer.wrap(file).getInt(entry + 12), with);
    return file;
  }

  private static byte[] withField(byte[] file, String table, int offset, int value) {
    int start = ByteBuffer.wrap(file).getInt(entry(file, table) + 8);
    ByteBuffer.wrap(file).putShort(start + offset, (short) value);
    return file;
  }
}
