package io.github.readfall.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Whatever a script holds, the program answers in words, in time, and without a fault of its own.
 */
class BadScriptTest {

  private static final Duration LONG_ENOUGH = Duration.ofSeconds(20);
  private static final String HEAD = "Language: en\nCast: Ilse\n\nPANEL 1\nThe mill.\n\n";

  private final Path folder;

  BadScriptTest(@TempDir Path folder) {
    this.folder = folder;
  }

  @TestFactory
  Stream<DynamicTest> bytesThatAreNoTextAreRefusedInOneSentence() {
    String text = HEAD + "ILSE: Caf\u00E9.\n";
    Map<String, byte[]> files = new TreeMap<>();
    files.put("Latin 1", text.getBytes(StandardCharsets.ISO_8859_1));
    files.put("Shift JIS", "ILSE: \u6F6E\u304C\u5F15\u304F".getBytes(Charset.forName("Shift_JIS")));
    files.put("UTF-16", text.getBytes(StandardCharsets.UTF_16));
    files.put("UTF-16LE", text.getBytes(StandardCharsets.UTF_16LE));
    files.put("UTF-16BE", text.getBytes(StandardCharsets.UTF_16BE));
    // A surrogate in three bytes (CESU-8): RFC 3629, section 3, forbids it.
    files.put("CESU", new byte[] {'A', ':', ' ', (byte) 0xED, (byte) 0xA0, (byte) 0xBD});
    files.put("cut off", new byte[] {'A', ':', ' ', (byte) 0xF0, (byte) 0x9F, (byte) 0x91});
    files.put("PNG", new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
    return files.entrySet().stream()
        .map(file -> dynamicTest(file.getKey(), () -> refused(write(file.getValue()))));
  }

  @TestFactory
  Stream<DynamicTest> placesWithoutAScriptAreRefusedInOneSentence() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));
    Path odd = Files.createDirectory(folder.resolve("odd"));
    Files.createDirectory(odd.resolve("script.txt"));
    Path loop = folder.resolve("loop.txt");
    Files.createSymbolicLink(loop, loop.getFileName());
    return Stream.of(
            empty, odd, odd.resolve("script.txt"), loop, folder.resolve("none"), Path.of(""))
        .map(path -> dynamicTest("\"" + path.getFileName() + "\"", () -> refused(path)));
  }

  @TestFactory
  Stream<DynamicTest> scriptsWithoutWordsAreNoFault() {
    return Stream.of("", "\n", "\n \n\t\n\u3000\n", "\uFEFF", "\r\r\r", "\0", "// nothing\n")
        .map(
            text ->
                dynamicTest(
                    named(text), () -> assertEquals(0, fits(text).path("balloons").size())));
  }

  @Test
  void aCueOfAMillionWordsIsNotSetAndSaidSo() {
    JsonNode report = fits(HEAD + "ILSE: " + "word ".repeat(1_000_000) + "\nILSE: Next.\n");
    assertEquals(1, report.path("balloons").size());
    assertEquals("p1-1", report.path("notSet").path(0).asString());
    assertTrue(rules(report).contains("script/long-cue"), rules(report).toString());
  }

  @Test
  void aWordOf100000LettersIsNotSetAndSaidSo() {
    JsonNode report = fits(HEAD + "ILSE: " + "a".repeat(100_000) + "\n");
    assertEquals(0, report.path("balloons").size());
    assertTrue(rules(report).contains("script/long-cue"), rules(report).toString());
  }

  @Test
  void aWordOf19999LettersIsBroken() {
    JsonNode report = fits(HEAD + "ILSE: " + "a".repeat(19_999) + "\n");
    assertEquals(19_999, letters(report));
    assertTrue(report.path("balloons").path(0).path("lines").size() > 100);
  }

  @Test
  void aTextOf1999OneLetterWordsKeepsThemAll() {
    JsonNode report = fits(HEAD + "ILSE: " + "a ".repeat(1_999) + "\n");
    assertEquals(1_999, letters(report));
  }

  @Test
  void everyOtherCueIsStillSetBesideABadOne() {
    JsonNode report =
        fits(HEAD + "ILSE: " + "a".repeat(30_000) + "\nILSE: \uE000\uDBFF\uDFFE\nILSE: Good.\n");
    assertEquals("GOOD.", lastLine(report));
  }

  @TestFactory
  Stream<DynamicTest> strangeTextIsSetOrNamed() {
    Map<String, String> texts = new TreeMap<>();
    texts.put("5000 combining marks", "e" + "\u0301".repeat(5_000) + " so");
    texts.put("a combining mark alone", "\u0301");
    texts.put("bidi controls", "\u202Eabc\u202C \u2067def\u2069 \u200F\u200E\u061C");
    texts.put("bidi controls that never close", "\u202E\u202E\u2067\u2066 " + "\u202A".repeat(200));
    texts.put("bidi controls alone", "\u202E\u202C\u2067\u2069");
    texts.put("private use", "\uE000\uF8FF \uDBC0\uDC00");
    texts.put("unassigned", "\u0378 \uDB40\uDDFF\uD87F\uDFFF");
    texts.put("noncharacters", "\uFFFE\uFFFF\uFDD0");
    texts.put("control characters", "a\0b\u0007c\u001Bd\u007Fe\u0085f");
    texts.put("zero width", "\u200B\u200C\u200D\u2060\uFEFF");
    texts.put("soft hyphens", "\u00AD\u00AD in\u00ADside \u00AD");
    texts.put("replacement", "\uFFFD");
    texts.put("ellipsis", "\u2026");
    texts.put("dash", "\u2014");
    texts.put("full stop", ".");
    texts.put("quotes", "\"\" ''");
    texts.put("thumb with a skin", "\uD83D\uDC4D\uD83C\uDFFD");
    texts.put("family", "\uD83D\uDC68\u200D\uD83D\uDC69\u200D\uD83D\uDC67\u200D\uD83D\uDC66");
    texts.put("flag", "\uD83C\uDDF3\uD83C\uDDF1\uD83C\uDDF3");
    texts.put("keycap", "1\uFE0F\u20E3");
    texts.put("no-break spaces", "\u00A0\u00A0\u202F");
    texts.put("a wide space", "\u3000");
    texts.put("ogham space", "\u1680");
    texts.put("line separator", "a\u2028b\u2029c");
    texts.put("breaks alone", " / / / ");
    texts.put("60 breaks", "a / ".repeat(60) + "b");
    texts.put("60 breaks and nothing", " / ".repeat(60));
    texts.put("emphasis over breaks", "It *is / count / ing* _a / gain_ *_all / over_*");
    texts.put("emphasis of nothing", "** __ *_*_ * _ */*");
    texts.put("emphasis of a break", "* / * a");
    texts.put("emphasis inside a letter", "e*\u0301* a*\u200D*b");
    texts.put("sharp s and ligature letters", "stra\u00DFe \uFB03 \u0149 \u0390 \u1F52");
    texts.put("zalgo", "Z\u0351\u036B\u0343\u036A\u0302\u036B A\u0321\u0353\u031E L\u0337\u0337");
    texts.put("cuneiform", "\uD808\uDC00\uD808\uDC01");
    texts.put("mathematical letters", "\uD835\uDC00\uD835\uDC01");
    texts.put("mixed directions", "abc \u05D0\u05D1\u05D2 123 \u0627\u0644\u0628 def (\u05D0) 1/2");
    return texts.entrySet().stream()
        .map(text -> dynamicTest(text.getKey(), () -> isSetAndDrawn(text.getValue())));
  }

  @Test
  void aLetterThatNoFaceHasIsFound() {
    JsonNode report = fits(HEAD + "ILSE: So \uE000.\n");
    assertEquals(1, report.path("balloons").size());
    assertTrue(rules(report).contains("legible/glyph-missing"), rules(report).toString());
  }

  @TestFactory
  Stream<DynamicTest> headsOfAnyKindAreNoFault() {
    List<String> heads =
        List.of(
            "Language: \n",
            "Language: xx-yy-zz-0123456789\n",
            "Language: ar, he\n",
            "Title: " + "T".repeat(50_000) + "\n",
            "Title: \u202E\uE000\n",
            "Episode: -1e999\n",
            "Cast: " + "A, ".repeat(5_000) + "\n",
            "Cast: Ilse (), (elder), ()\n",
            "PANEL 99999999999999999999  height 99999999999999999999\n",
            "PANEL " + "x".repeat(50_000) + "\n",
            "SCENE\nSCENE\nPANEL\nPANEL\n");
    return heads.stream()
        .map(head -> dynamicTest(named(head), () -> fits(head + "\nPANEL\n\nILSE: A word.\n")));
  }

  @TestFactory
  Stream<DynamicTest> mannersOfAnyKindAreNoFault() {
    List<String> manners =
        List.of(
            "",
            ",",
            ",,,",
            " ",
            "whisper,, ,",
            "joined",
            "joined, joined",
            "drawn, joined",
            "whisper, shout, thought, off, caption, sound effect, electronic, wavy, drawn",
            "burble, mumble",
            "x".repeat(5_000),
            "whisper,".repeat(500),
            "((",
            "\uE000\u202E");
    return manners.stream()
        .map(
            manner ->
                dynamicTest(named(manner), () -> fits(HEAD + "ILSE (" + manner + "): A word.\n")));
  }

  @Test
  void aLongScriptTakesSeconds() {
    StringBuilder script = new StringBuilder(HEAD);
    for (int panel = 2; panel < 500; panel++) {
      script.append("\nPANEL ").append(panel).append("\n\nILSE: Number ").append(panel);
      script.append(" of the long night, and the wheel still hangs.\n");
    }
    assertEquals(498, fits(script.toString()).path("balloons").size());
  }

  private void refused(Path path) {
    Ran ran = assertTimeoutPreemptively(LONG_ENOUGH, () -> Ran.of("fit", path));
    assertTrue(ran.isRefusedInOneSentence(), ran.toString());
  }

  /** Fits a script, and holds the program to a report with no fault of its own. */
  private JsonNode fits(String script) {
    return report("fit", script(script), "--json");
  }

  /** Draws it, too. */
  private void isSetAndDrawn(String text) {
    Path picture = folder.resolve("out.svg");
    report("fit", script(HEAD + "ILSE: " + text + "\n"), "--json", "--picture", picture);
    assertTrue(Files.exists(picture));
  }

  private Path script(String text) {
    try {
      return write(text.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static JsonNode report(Object... args) {
    Ran ran = assertTimeoutPreemptively(LONG_ENOUGH, () -> Ran.of(args));
    assertTrue(ran.status() <= 1, ran.err());
    assertEquals("", ran.err());
    JsonNode report = JsonMapper.builder().build().readTree(ran.out());
    report.path("findings").forEach(BadScriptTest::isPlain);
    return report;
  }

  private static void isPlain(JsonNode finding) {
    String message = finding.path("message").asString();
    assertTrue(message.endsWith(".") && !message.contains("Exception"), message);
    assertTrue(message.length() < 500, "a message of " + message.length() + " letters");
  }

  private Path write(byte[] bytes) throws IOException {
    return Files.write(folder.resolve("some.txt"), bytes);
  }

  private static List<String> rules(JsonNode report) {
    return report.path("findings").valueStream().map(f -> f.path("rule").asString()).toList();
  }

  private static long letters(JsonNode report) {
    return report
        .path("balloons")
        .path(0)
        .path("lines")
        .valueStream()
        .flatMapToInt(line -> line.path("text").asString().codePoints())
        .filter(c -> c == 'A')
        .count();
  }

  private static String lastLine(JsonNode report) {
    JsonNode balloons = report.path("balloons");
    return balloons.path(balloons.size() - 1).path("lines").path(0).path("text").asString();
  }

  private static String named(String text) {
    String start = text.length() > 30 ? text.substring(0, 30) + " (" + text.length() + ")" : text;
    return "\"" + start.replaceAll("\\p{Cntrl}", "|") + "\"";
  }
}
