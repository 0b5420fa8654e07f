package io.github.readfall.type.font;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.viewing.LetterKind;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A person's own faces: the good ones are used, each bad one is named in one plain sentence. */
class FontShelfTest {

  private static final Path SOUND = OpenFaces.FOLDER.resolve("comic-neue/ComicNeue-Regular.ttf");
  private static final Path CFF = Path.of("src/test/resources/font/tidemark.otf");
  private static final int MUTATIONS = 300;
  private static final int FAR_UNITS = 10_000_000;

  private final Path fonts;

  FontShelfTest(@TempDir Path fonts) {
    this.fonts = fonts;
  }

  @Test
  void ownFacesComeBeforeTheBundledOnes() throws Exception {
    Files.copy(SOUND, fonts.resolve("Mine.ttf"));
    Files.copy(CFF, fonts.resolve("tidemark.OTF"));
    FontShelf.Stocked stocked = OpenFaces.shelf().with(fonts);
    assertEquals(List.of(), stocked.findings());

    FontShelf shelf = stocked.shelf();
    assertEquals("fonts/Mine.ttf", shelf.find("comic neue", 400, false).orElseThrow().id());
    assertEquals(OpenFaces.files().size() + 2, shelf.files().size());
    Face mine = shelf.open(shelf.find("fonts/mine.ttf", 400, false).orElseThrow());
    assertEquals(
        OpenFaces.regular("Comic Neue").shape("AVATAR").advance(), mine.shape("AVATAR").advance());
  }

  @Test
  void aCffFaceIsReadWhole() throws Exception {
    Files.copy(CFF, fonts.resolve("tidemark.otf"));
    FontShelf shelf = OpenFaces.shelf().with(fonts).shelf();
    FaceFile file = shelf.find("Tidemark", 400, false).orElseThrow();
    assertEquals(500, file.weight());
    Face face = shelf.open(file);
    assertEquals(700, face.heightUnits(LetterKind.CAPITAL)); // as tidemark.py draws it
    assertEquals(500, face.heightUnits(LetterKind.X_HEIGHT));
    assertEquals(0, face.heightUnits(LetterKind.IDEOGRAPH));
    assertEquals(new Ink(60, 0, 540, 700), OpenFaces.ink(face, "H"));
    assertEquals(new Ink(50, 0, 550, 500), OpenFaces.ink(face, "o"));
    assertEquals(Embedding.Permission.EDITABLE, face.embedding().permission());
  }

  @Test
  void withoutAFontsFolderTheBundledFacesStand() throws Exception {
    FontShelf.Stocked stocked = OpenFaces.shelf().with(fonts.resolve("not-there"));
    assertEquals(List.of(), stocked.findings());
    assertEquals(OpenFaces.files(), stocked.shelf().files());
  }

  @Test
  void filesThatAreNoFontsAreLeftInPeace() throws Exception {
    Files.writeString(fonts.resolve("OFL.txt"), "a licence");
    Files.writeString(fonts.resolve("specimen.png"), "a picture");
    assertEquals(List.of(), OpenFaces.shelf().with(fonts).findings());
  }

  @Test
  void aFileCutShortAnywhereIsNamedOnce() throws Exception {
    byte[] whole = Files.readAllBytes(SOUND);
    for (int part = 0; part < 20; part++) {
      Files.write(fonts.resolve("cut" + part + ".ttf"), cut(whole, part / 20.0));
    }
    assertEquals(20, unusable(0).size());
  }

  @Test
  void aBundledFaceIsOpenedOnceForAllShelvesMadeFromOne() throws Exception {
    FontShelf bundled = FontShelf.bundled(Path.of("fonts-open"));
    Files.copy(SOUND, fonts.resolve("own.ttf"));
    FontShelf one = bundled.with(fonts).shelf();
    FontShelf other = bundled.with(fonts).shelf();
    FaceFile file = bundled.files().get(0);
    assertSame(one.open(file), other.open(file));
    assertSame(bundled.open(file), other.open(file));
  }

  @Test
  void onlyAFileWithThePromisedSumIsTakenUnseen() throws Exception {
    Path path = fonts.resolve("face.ttf");
    Files.write(path, FontBytes.of(SOUND).all());
    String promised = HexFormat.of().formatHex(sha256(path));
    assertTrue(promising(path, promised).isUnchanged());
    assertFalse(promising(path, "").isUnchanged());
    Files.write(path, cut(Files.readAllBytes(SOUND), 0.9));
    assertFalse(promising(path, promised).isUnchanged());
    assertThrows(FaceException.class, () -> Face.open(promising(path, promised)));
  }

  private static FaceFile promising(Path path, String sha256) {
    return new FaceFile("fonts-open/x/face.ttf", path, "X", 400, false, false, sha256);
  }

  private static byte[] sha256(Path path) throws Exception {
    return MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(path));
  }

  @Test
  void aCffFileCutShortAnywhereIsNamedOnce() throws Exception {
    byte[] whole = Files.readAllBytes(CFF);
    for (int part = 0; part < 20; part++) {
      Files.write(fonts.resolve("cut" + part + ".otf"), cut(whole, part / 20.0));
    }
    assertEquals(20, unusable(0).size());
  }

  private static byte[] cut(byte[] whole, double part) {
    return Arrays.copyOf(whole, (int) (whole.length * part));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "empty.ttf      | not a TrueType or OpenType font",
        "text.ttf       | not a TrueType or OpenType font",
        "noise.otf      | not a TrueType or OpenType font",
        "folder.ttf     | cannot be read",
        "collection.ttf | font collection",
        "collection.ttc | font collection",
        "web.woff2      | not a TrueType or OpenType font",
        "variable.ttf   | variable font",
        "colour.TTF     | colour font",
        "no-glyphs.ttf  | damaged",
        "no-em.ttf      | damaged",
        "no-cmap.ttf    | damaged",
        "no-name.Ttf    | damaged"
      })
  void whatCannotBeUsedIsNamedOnceAndSaysWhy(String name, String why) throws Exception {
    FontBytes sound = FontBytes.of(SOUND);
    Path file = fonts.resolve(name);
    switch (name.substring(0, name.indexOf('.'))) {
      case "empty" -> Files.createFile(file);
      case "text" -> Files.writeString(file, "This is a letter, not a letterform.\n");
      case "noise" -> Files.write(file, noise(4096));
      case "folder" -> Files.createDirectory(file);
      case "collection" ->
          Files.write(file, "ttcf\0\1\0\0\0\0\0\1".getBytes(StandardCharsets.US_ASCII));
      case "web" -> Files.write(file, "wOF2\0\1\0\0\0\0\0\1".getBytes(StandardCharsets.US_ASCII));
      case "variable" -> Files.write(file, sound.renamed("gasp", "fvar").all());
      case "colour" -> Files.write(file, sound.renamed("gasp", "COLR").all());
      case "no-glyphs" -> Files.write(file, sound.with("maxp", 4, 0).all());
      case "no-em" -> Files.write(file, sound.with("head", 18, 0).all());
      case "no-cmap" -> Files.write(file, sound.renamed("cmap", "xxxx").all());
      case "no-name" -> Files.write(file, sound.renamed("name", "xxxx").all());
      default -> throw new AssertionError(name);
    }
    Files.copy(CFF, fonts.resolve("sound.otf"));
    Finding finding = unusable(1).get(0);
    assertTrue(
        finding.message().contains(name) && finding.message().contains(why), finding.message());
  }

  private static byte[] noise(int length) {
    byte[] bytes = new byte[length];
    new SplittableRandom(7).nextBytes(bytes);
    return bytes;
  }

  /** AWT puts a face of the system in the place of one it cannot rasterise, and says nothing. */
  @Test
  void aWipedTableNeverBringsInAnotherFace() throws Exception {
    FontBytes sound = FontBytes.of(SOUND);
    for (String table : sound.tables()) {
      Files.write(fonts.resolve("zeros-" + name(table)), sound.wiped(table, (byte) 0).all());
      Files.write(fonts.resolve("ones-" + name(table)), sound.wiped(table, (byte) 0xff).all());
    }
    FontShelf.Stocked stocked = stockedWith(2 * sound.tables().size());
    assertTrue(stocked.findings().stream().anyMatch(f -> f.message().contains("zeros-glyf")));
    assertTrue(stocked.findings().stream().anyMatch(f -> f.message().contains("zeros-loca")));
    assertTrue(stocked.findings().stream().anyMatch(f -> f.message().contains("ones-head")));
    assertTrue(own(stocked.shelf()).stream().anyMatch(file -> file.id().contains("zeros-gasp")));
    for (FaceFile file : own(stocked.shelf())) {
      assertSetsItsOwnGlyphs(stocked.shelf(), file);
    }
  }

  private static String name(String table) {
    return table.replaceAll("[^A-Za-z0-9]", "_") + ".ttf";
  }

  @Test
  void strayBytesNeverThrowAndNeverSpoilAnotherFace() throws Exception {
    double before = OpenFaces.regular("Comic Neue").shape("AVATAR").advance();
    byte[] sound = Files.readAllBytes(SOUND);
    for (int seed = 0; seed < MUTATIONS; seed++) {
      Files.write(fonts.resolve("m" + seed + ".ttf"), mutated(sound, seed));
    }
    FontShelf.Stocked stocked = stockedWith(MUTATIONS);
    assertTrue(stocked.findings().size() > MUTATIONS / 10, "the damage was too slight to tell");
    assertTrue(own(stocked.shelf()).size() > MUTATIONS / 10, "the damage was too great to tell");
    for (FaceFile file : own(stocked.shelf())) {
      assertSetsItsOwnGlyphs(stocked.shelf(), file);
    }
    assertEquals(before, OpenFaces.regular("Comic Neue").shape("AVATAR").advance());
  }

  private static byte[] mutated(byte[] sound, int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    byte[] bytes = sound.clone();
    int changes = 1 << random.nextInt(7);
    int within = random.nextBoolean() ? 2000 : bytes.length; // headers matter most
    for (int i = 0; i < changes; i++) {
      bytes[random.nextInt(within)] = (byte) random.nextInt(256);
    }
    return bytes;
  }

  private static void assertSetsItsOwnGlyphs(FontShelf shelf, FaceFile file) throws Exception {
    Face face = shelf.open(file);
    int glyphs = FontHeader.read(file.path()).glyphCount();
    for (String text : List.of("AVATAR To Wa, fi ffl 1.", "Hx éß")) {
      GlyphRow row = face.shape(text);
      for (int i = 0; i < row.size(); i++) {
        if (row.isDrawn(i)) {
          assertTrue(row.glyph(i) < glyphs, file.id() + " sets glyph " + row.glyph(i));
          face.ink(row.glyph(i), 10);
        }
        assertTrue(Math.abs(row.x(i)) < FAR_UNITS, file.id());
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"0, 100", "4, 100", "400, 400", "950, 900", "65535, 900"})
  void weightsStayOnTheScale(int stated, int weight) throws Exception {
    Files.write(fonts.resolve("w.ttf"), FontBytes.of(SOUND).with("OS/2", 4, stated).all());
    assertEquals(weight, own(OpenFaces.shelf().with(fonts).shelf()).get(0).weight());
  }

  @ParameterizedTest
  @CsvSource({"0", "-20"})
  void aSenselessCapitalHeightInTheFileDoesNoHarm(int stated) throws Exception {
    Files.write(fonts.resolve("c.ttf"), FontBytes.of(SOUND).with("OS/2", 88, stated).all());
    FontShelf shelf = OpenFaces.shelf().with(fonts).shelf();
    Face face = shelf.open(own(shelf).get(0));
    assertEquals(OpenFaces.ink(face, "H").top(), face.heightUnits(LetterKind.CAPITAL));
  }

  @ParameterizedTest
  @CsvSource({
    "Grandstander, 400, false, Grandstander-Regular",
    "GRANDSTANDER, 600, false, Grandstander-Bold",
    "grandstander, 700, true, Grandstander-BoldItalic",
    "Pangolin, 700, true, Pangolin-Regular", // all there is
    "fonts-open/mali/Mali-Bold.ttf, 700, false, Mali-Bold",
    "fonts-open/mali/Mali-Bold.ttf, 700, true, Mali-BoldItalic"
  })
  void theNearestFaceIsFound(String name, int weight, boolean italic, String file)
      throws Exception {
    FaceFile found = OpenFaces.shelf().find(name, weight, italic).orElseThrow();
    assertTrue(found.id().endsWith("/" + file + ".ttf"), found.id());
  }

  @Test
  void aFamilyThatIsNotThereIsNotFound() throws Exception {
    assertTrue(OpenFaces.shelf().find("Nosuch Hand", 400, false).isEmpty());
  }

  @Test
  void aFaceIsOpenedOnce() throws Exception {
    FontShelf shelf = OpenFaces.shelf();
    assertSame(shelf.open(shelf.files().get(0)), shelf.open(shelf.files().get(0)));
  }

  @Test
  void aMissingManifestIsASentence() {
    FaceException e = assertThrows(FaceException.class, () -> FontShelf.bundled(fonts));
    assertTrue(e.getMessage().contains("fonts.toml is not there"), e.getMessage());
  }

  /** Stocks a shelf from the folder, in which so many files are sound and all others are not. */
  private List<Finding> unusable(int sound) throws FaceException {
    FontShelf.Stocked stocked = OpenFaces.shelf().with(fonts);
    assertEquals(sound, own(stocked.shelf()).size());
    assertSentences(stocked.findings());
    return stocked.findings();
  }

  /** Stocks a shelf from so many files, each of which is either used or named. */
  private FontShelf.Stocked stockedWith(int files) throws FaceException {
    FontShelf.Stocked stocked = OpenFaces.shelf().with(fonts);
    assertEquals(files, stocked.findings().size() + own(stocked.shelf()).size());
    assertSentences(stocked.findings());
    return stocked;
  }

  private static void assertSentences(List<Finding> findings) {
    Set<String> distinct = new HashSet<>();
    for (Finding finding : findings) {
      assertEquals("font/unusable", finding.rule());
      assertTrue(finding.message().matches("[^\n]+\\."), finding.message());
      assertFalse(finding.message().contains("Exception"), finding.message());
      assertTrue(distinct.add(finding.advice()), "one finding a file");
    }
  }

  private static List<FaceFile> own(FontShelf shelf) {
    return shelf.files().stream().filter(file -> file.id().startsWith("fonts/")).toList();
  }

  @Test
  void aFileIsTakenAsItIsUnlessABoldOrAnItalicIsWanted() throws FaceException {
    FontShelf shelf = FontShelf.bundled(Path.of("fonts-open"));
    String file = "fonts-open/grandstander/Grandstander-Bold.ttf";
    assertEquals(file, shelf.find(file, 400, false).orElseThrow().id());
    assertEquals(
        "fonts-open/grandstander/Grandstander-BoldItalic.ttf",
        shelf.find(file, 700, true).orElseThrow().id());
    assertEquals(
        "fonts-open/grandstander/Grandstander-Regular.ttf",
        shelf.find("grandstander", 400, false).orElseThrow().id());
  }
}
