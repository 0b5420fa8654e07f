package io.github.readfall.dist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;

/** Looks into what is handed out: the folder, the zip, and the licences of what is in them. */
class ContentsIT {

  private static final Path HOME = Path.of("target", "readfall");
  private static final String VERSION = System.getProperty("readfall.version", "");
  private static final Path ZIP = Path.of("target", "readfall-" + VERSION + ".zip");
  private static final String OWN_JAR = "readfall.jar";

  /** Good only beside the jar it was made of, so it is not handed out. */
  private static final String START_ARCHIVE = "readfall.jsa";

  @Test
  void zipHoldsWhatTheFolderHolds() throws IOException {
    try (FileSystem zip = zip()) {
      Map<String, Long> folder = sums(HOME);
      assertTrue(folder.keySet().removeIf(START_ARCHIVE::equals), START_ARCHIVE);
      assertEquals(folder, sums(zip.getPath("readfall-" + VERSION)));
    }
  }

  @Test
  void launcherMayBeRunWhenUnzipped() throws IOException {
    try (FileSystem zip = zip()) {
      Path launcher = zip.getPath("readfall-" + VERSION, "bin", "readfall");
      assertEquals(
          "rwxr-xr-x", PosixFilePermissions.toString(Files.getPosixFilePermissions(launcher)));
    }
  }

  @Test
  void folderHoldsTheFilesOfTheProject() throws IOException {
    for (String name : List.of("LICENSE", "README.md", "fonts-open", "sample-scripts")) {
      assertEquals(sums(Path.of(name)), sums(HOME.resolve(name)), name);
    }
  }

  @Test
  void jarNamesEveryJarBesideIt() throws IOException {
    try (JarFile jar = new JarFile(HOME.resolve(OWN_JAR).toFile())) {
      String named = jar.getManifest().getMainAttributes().getValue("Class-Path");
      Set<String> paths = new TreeSet<>();
      libraries().forEach(library -> paths.add("lib/" + library));
      assertEquals(paths, new TreeSet<>(List.of(named.split(" ", -1))));
    }
  }

  @Test
  void licencesNameEveryLibraryWithItsVersionAndNoOther() throws IOException {
    List<String> named = found("^Library: (\\S+) (\\S+)$", "$1-$2.jar");
    assertEquals(libraries(), new TreeSet<>(named));
    assertEquals(libraries().size(), named.size(), "one is named twice");
  }

  @Test
  void everyLicenceThatIsNamedIsThereInFullOnce() throws IOException {
    List<String> named = found("^Licence: (\\S+)$", "$1");
    named.addAll(found("^- .* \\((\\S+)\\), Copyright .*$", "$1"));
    List<String> texts = found("^==== Licence text: (\\S+) ====$", "$1");
    assertEquals(new TreeSet<>(named), new TreeSet<>(texts));
    assertEquals(new TreeSet<>(texts).size(), texts.size(), "one is there twice");
  }

  @Test
  void apacheLicenceIsTheSameInBothPlaces() throws IOException {
    String licence = Files.readString(Path.of("LICENSE")).strip();
    assertTrue(licence.startsWith("Apache License"));
    assertTrue(Files.readString(HOME.resolve("licences.txt")).contains(licence));
  }

  private static Set<String> libraries() throws IOException {
    try (Stream<Path> files = Files.list(HOME.resolve("lib"))) {
      Set<String> names = new TreeSet<>();
      files.map(file -> file.getFileName().toString()).forEach(names::add);
      return names;
    }
  }

  private static List<String> found(String line, String shown) throws IOException {
    String text = Files.readString(HOME.resolve("licences.txt"));
    return new ArrayList<>(
        Pattern.compile(line, Pattern.MULTILINE)
            .matcher(text)
            .results()
            .map(hit -> hit.group().replaceAll(line, shown))
            .toList());
  }

  private static FileSystem zip() throws IOException {
    return FileSystems.newFileSystem(ZIP, Map.of("enablePosixFileAttributes", true));
  }

  /** The checksum of every file below a folder, or of a file; nothing where there is neither. */
  private static Map<String, Long> sums(Path top) throws IOException {
    Map<String, Long> sums = new TreeMap<>();
    if (Files.exists(top)) {
      try (Stream<Path> files = Files.walk(top)) {
        for (Path file : files.filter(Files::isRegularFile).toList()) {
          CRC32 sum = new CRC32();
          sum.update(Files.readAllBytes(file));
          sums.put(top.relativize(file).toString(), sum.getValue());
        }
      }
    }
    return sums;
  }
}
