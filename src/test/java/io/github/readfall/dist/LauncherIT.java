package io.github.readfall.dist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Runs the packaged program as a person does: by its launcher, as a process of its own. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LauncherIT {

  private static final Path HOME = Path.of("target", "readfall").toAbsolutePath();
  private static final String LAUNCHER = HOME.resolve("bin/readfall").toString();
  private static final String SAMPLE = HOME.resolve("sample-scripts/overdue-tide/ep01").toString();
  private static final String FIT = "\"" + LAUNCHER + "\" fit \"" + SAMPLE + "\"";

  private final Ran plain = Ran.script(HOME, Map.of(), FIT);
  private final JsonNode report = json(HOME, Map.of("LC_ALL", "C.UTF-8"));

  @TempDir private Path folder;

  LauncherIT() throws IOException, InterruptedException {}

  @Test
  void fitsTheSampleFromAnyFolder() throws Exception {
    assertEquals(0, plain.status(), plain.err());
    assertTrue(plain.out().startsWith("The Overdue Tide, episode 1\n"), plain.out());
    assertTrue(plain.out().contains("\n  p1-1    CAPTION "), plain.out());
    assertEquals("", plain.err());
    assertEquals(plain, run("", FIT));
  }

  @ParameterizedTest
  @CsvSource({
    "LC_ALL,C",
    "LC_ALL,POSIX",
    "LANG,tr_TR.UTF-8",
    "JDK_JAVA_OPTIONS,-Duser.language=tr -Duser.country=TR -Dfile.encoding=ISO-8859-9"
  })
  void printsTheSameJsonInEveryLocale(String name, String value) throws Exception {
    assertTrue(report.toString().contains("—"), "the sample shows no letter beyond ASCII");
    assertEquals(report, json(folder, Map.of(name, value)));
  }

  @Test
  void runsThroughSymbolicLinks() throws Exception {
    Files.createSymbolicLink(folder.resolve("first"), Path.of(LAUNCHER));
    Files.createDirectory(folder.resolve("bin"));
    Files.createSymbolicLink(folder.resolve("bin/readfall"), Path.of("../first"));
    assertEquals("Readfall " + version() + "\n", run("", "bin/readfall --version").out());
    assertEquals(plain, run("", "PATH=bin:$PATH; readfall fit \"" + SAMPLE + "\""));
    Files.delete(folder.resolve("first"));
  }

  @ParameterizedTest
  @CsvSource({"C", "C.UTF-8"})
  void runsInAFolderNamedWithASpaceAndAnAccent(String locale) throws Exception {
    Ran ran =
        run(
            "LC_ALL=" + locale,
            """
            named=$(printf 'my caf\\303\\251')
            cp -R "%s" "$named"
            "$named/bin/readfall" fit "$named/sample-scripts/overdue-tide/ep01"
            """
                .replace("%s", HOME.toString()));
    assertEquals(plain, ran);
  }

  @Test
  void startsFromTheArchiveThatTheBuildLaidOut() throws Exception {
    String traced = "\"" + LAUNCHER + "\" --version";
    Ran ran = run("JDK_JAVA_OPTIONS=-Xlog:class+load", traced);
    assertTrue(
        ran.out().contains("io.github.readfall.Main source: shared objects file (top)"),
        "the classes were loaded from the jar");
  }

  @Test
  void runsAsAJar() throws Exception {
    Ran ran = run("", "java -jar \"" + HOME + "/readfall.jar\" fit \"" + SAMPLE + "\"");
    assertEquals(plain, ran);
  }

  @Test
  void saysOneSentenceWhenNothingIsThere() throws Exception {
    Ran ran = run("", "\"" + LAUNCHER + "\" fit nowhere");
    assertEquals(2, ran.status());
    assertEquals("", ran.out());
    assertTrue(ran.err().matches("readfall: There is nothing at [^\\n]*nowhere[^\\n]*\\.\\n"));
  }

  @Test
  void fitsTheSampleInASmallHeap() throws Exception {
    Ran ran = run("JAVA_TOOL_OPTIONS=-Xmx256m", FIT);
    assertEquals(0, ran.status(), ran.err());
    assertEquals("Picked up JAVA_TOOL_OPTIONS: -Xmx256m\n", ran.err()); // Java's own notice
  }

  @Test
  void leavesTheHeapToJava() throws Exception {
    String options = "-Xmx96m -Xms48m -XX:+PrintFlagsFinal";
    Ran ran = run("JAVA_TOOL_OPTIONS=" + options, "\"" + LAUNCHER + "\" --version");
    assertEquals("100663296", flag(ran.out(), "MaxHeapSize"));
    assertEquals("50331648", flag(ran.out(), "InitialHeapSize"));
  }

  @Test
  void printsEveryLicence() throws Exception {
    Ran ran = run("LC_ALL=C", "\"" + LAUNCHER + "\" --licences");
    assertEquals(0, ran.status(), ran.err());
    assertTrue(ran.out().startsWith(Files.readString(HOME.resolve("licences.txt"))));
    for (Path licence : faceLicences()) {
      assertTrue(ran.out().contains(Files.readString(licence)), licence + " is not printed");
    }
  }

  @Test
  void asksForJavaWhereThereIsNone() throws Exception {
    assertAsksForJava(run("JAVA_HOME=" + folder, withoutJava() + "\"" + LAUNCHER + "\" --version"));
  }

  @Test
  void asksForANewerJavaWhereItIsOld() throws Exception {
    Path old = java("1.8.0_402");
    assertAsksForJava(run("JAVA_HOME=" + old, withoutJava() + "\"" + LAUNCHER + "\" --version"));
    Ran other = run("JAVA_HOME=" + old, "\"" + LAUNCHER + "\" --version");
    assertEquals("Readfall " + version() + "\n", other.out(), "the Java on PATH is not tried");
  }

  @Test
  void takesTheJavaOfJavaHomeFirst() throws Exception {
    assertEquals(
        "not the one on PATH\n",
        run("JAVA_HOME=" + java("17"), "\"" + LAUNCHER + "\" --version").out());
  }

  private static void assertAsksForJava(Ran ran) {
    assertEquals(2, ran.status());
    assertEquals("", ran.out());
    assertTrue(ran.err().matches("readfall: Readfall needs Java 17 or newer: [^\\n]*\\.\\n"));
  }

  /** A shell line that leaves on the PATH what every machine has, and no Java. */
  private static String withoutJava() {
    return """
    mkdir tools
    for tool in dirname readlink sed locale; do
      printf '#!/bin/sh\\nexec %s "$@"\\n' "$(command -v "$tool")" >tools/$tool
    done
    chmod +x tools/*
    PATH=tools
    """;
  }

  private Path java(String version) throws IOException {
    Path home = Files.createTempDirectory(folder, "java");
    Files.writeString(home.resolve("release"), "JAVA_VERSION=\"" + version + "\"\n");
    Path java = Files.createDirectory(home.resolve("bin")).resolve("java");
    Files.writeString(java, "#!/bin/sh\necho 'not the one on PATH'\n");
    assertTrue(java.toFile().setExecutable(true));
    return home;
  }

  private Ran run(String variable, String script) throws IOException, InterruptedException {
    String[] parts = variable.split("=", 2);
    Map<String, String> more = parts.length == 2 ? Map.of(parts[0], parts[1]) : Map.of();
    return Ran.script(folder, more, script);
  }

  /** The report on the sample, less the one thing that differs from run to run. */
  private static JsonNode json(Path where, Map<String, String> environment)
      throws IOException, InterruptedException {
    Ran ran = Ran.script(where, environment, FIT + " --json");
    assertEquals(0, ran.status(), ran.err());
    ObjectNode report = (ObjectNode) JsonMapper.shared().readTree(ran.out());
    assertFalse(report.path("balloons").isEmpty());
    report.remove("timings");
    return report;
  }

  private static String flag(String out, String name) {
    return out.lines()
        .map(line -> line.strip().split("\\s+"))
        .filter(word -> word.length > 3 && word[1].equals(name))
        .map(word -> word[3])
        .findFirst()
        .orElseThrow();
  }

  private static List<Path> faceLicences() throws IOException {
    try (var files = Files.walk(HOME.resolve("fonts-open"))) {
      List<Path> found = files.filter(file -> file.endsWith("OFL.txt")).toList();
      assertFalse(found.isEmpty());
      return found;
    }
  }

  private static String version() {
    return System.getProperty("readfall.version", "");
  }
}
