package io.github.readfall.type.font;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Holds the bundled faces to the manifest, to the OpenType specification's table names, and to the
 * terms of the SIL Open Font License 1.1 (26 February 2007), condition 2: each copy carries the
 * copyright notice and the licence.
 */
class FontManifestTest {

  private static final int AT_LEAST_FILES = 30;
  private static final double PLAIN_I = 0.5; // of the width of an H
  private static final double BARRED_I = 1.4; // top over middle
  private static final Set<String> NOT_FOR_US = Set.of("fvar", "COLR", "CBDT", "sbix", "SVG ");

  static List<FaceFile> files() throws FaceException {
    return OpenFaces.files();
  }

  static List<FontManifest.Family> families() throws FaceException {
    return OpenFaces.shelf().manifest().families();
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyFileIsTheOneThatWasPromised(FaceFile file) throws Exception {
    MessageDigest digest = MessageDigest.getInstance("SHA-256");
    byte[] sum = digest.digest(Files.readAllBytes(file.path()));
    assertEquals(file.sha256(), HexFormat.of().formatHex(sum));
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyFileHasPlainStaticTrueTypeOutlines(FaceFile file) throws IOException {
    Set<String> tables = tables(file.path());
    assertTrue(tables.contains("glyf"), "no TrueType outlines");
    NOT_FOR_US.forEach(tag -> assertFalse(tables.contains(tag), tag));
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyFileSaysItsLicenceAndWhatTheManifestSays(FaceFile file) throws Exception {
    FontHeader header = FontHeader.read(file.path());
    assertTrue(header.names().getOrDefault(13, "").contains("SIL Open Font License"), "name 13");
    assertTrue(header.names().getOrDefault(14, "").matches(".*(OFL|openfontlicense).*"), "name 14");
    assertEquals(file.weight(), header.weight());
    assertEquals(file.italic(), header.italic());
    assertTrue(header.embedding().isAllowed());
  }

  @ParameterizedTest
  @MethodSource("families")
  void theLicenceLiesBesideEveryFamilyWithItsCopyrightLine(FontManifest.Family family)
      throws Exception {
    String licence = Files.readString(OpenFaces.FOLDER.resolve(family.folder()).resolve("OFL.txt"));
    assertTrue(licence.contains("SIL OPEN FONT LICENSE Version 1.1 - 26 February 2007"));
    assertTrue(licence.lines().anyMatch(family.copyright()::equals), family.copyright());
    assertEquals("OFL-1.1", family.licence());
    for (FaceFile file : family.faces()) {
      assertEquals(family.copyright(), FontHeader.read(file.path()).names().get(0), file.id());
    }
  }

  @Test
  void theManifestListsEveryFontFileThereIs() throws Exception {
    Set<Path> listed =
        files().stream().map(FaceFile::path).collect(Collectors.toCollection(TreeSet::new));
    try (Stream<Path> walk = Files.walk(OpenFaces.FOLDER)) {
      Set<Path> onDisk =
          walk.filter(path -> path.toString().matches(".*\\.(ttf|otf|ttc|woff2?)"))
              .collect(Collectors.toCollection(TreeSet::new));
      assertEquals(onDisk, listed);
    }
    assertTrue(listed.size() >= AT_LEAST_FILES, "only " + listed.size());
  }

  @Test
  void everyNameInTheChainsAndDefaultsIsAFamily() throws Exception {
    FontManifest manifest = OpenFaces.shelf().manifest();
    Set<String> names =
        manifest.families().stream().map(FontManifest.Family::name).collect(Collectors.toSet());
    assertTrue(names.contains(manifest.dialogue()));
    assertTrue(names.contains(manifest.effects()));
    assertFalse(manifest.chains().isEmpty());
    manifest.chains().forEach((script, chain) -> assertTrue(names.containsAll(chain), script));
  }

  @Test
  void theDialogueFamilyHasRegularBoldAndTheirItalics() throws Exception {
    String dialogue = OpenFaces.shelf().manifest().dialogue();
    Set<String> styles =
        files().stream()
            .filter(file -> file.family().equals(dialogue))
            .map(file -> file.weight() + (file.italic() ? " italic" : ""))
            .collect(Collectors.toSet());
    assertEquals(Set.of("400", "400 italic", "700", "700 italic"), styles);
  }

  @Test
  void theDialogueFaceHasAPlainCapitalI() throws Exception {
    Face face = OpenFaces.regular(OpenFaces.shelf().manifest().dialogue());
    assertTrue(widthOf(face, "I") < PLAIN_I * widthOf(face, "H"));
    assertFalse(face.file().barredCapitalI());
  }

  /**
   * Bars make the top of the letter wider than its middle; a stroke alone does not. Of the bundled
   * faces the plain ones reach 1.1 times, the barred ones 1.76 times at least.
   */
  @ParameterizedTest
  @MethodSource("files")
  void theFlagForABarredCapitalITellsTheTruth(FaceFile file) throws Exception {
    Face face = OpenFaces.shelf().open(file);
    InkProfile profile = InkProfile.of(face, "I");
    boolean barred = profile.widthNearTop() > BARRED_I * profile.widthInMiddle();
    assertEquals(file.barredCapitalI(), barred, profile::toString);
  }

  private static double widthOf(Face face, String letter) {
    Ink ink = OpenFaces.ink(face, letter);
    return ink.right() - ink.left();
  }

  /** Tags in the table directory (OpenType specification, "Organization of an OpenType Font"). */
  private static Set<String> tables(Path file) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file));
    Set<String> tags = new TreeSet<>();
    for (int i = 0; i < bytes.getShort(4); i++) {
      tags.add(new String(bytes.array(), 12 + 16 * i, 4, StandardCharsets.ISO_8859_1));
    }
    return tags;
  }
}
