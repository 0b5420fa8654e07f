package io.github.readfall.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.script.read.ReadScript;
import io.github.readfall.script.read.ScriptReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Holds the reader to the cases of {@code cases.txt}, each also as a property. */
class ScriptCasesTest {

  private static final Path FILE = Path.of("src/test/resources/script/cases.txt");
  private static final int AT_LEAST = 35;
  private static final boolean ACCEPT = "accept".equals(System.getProperty("golden"));

  record Case(String name, String why, String script, String expected) {}

  @TestFactory
  Stream<DynamicTest> readsAsWritten() throws IOException {
    return cases().stream().map(c -> DynamicTest.dynamicTest(c.name(), () -> check(c)));
  }

  @TestFactory
  Stream<DynamicTest> readsTheSameWithOtherLineEnds() throws IOException {
    return cases().stream()
        .flatMap(
            c ->
                Stream.of("\r\n", "\r", "\u0085", "\u2028", "\u2029")
                    .map(end -> withLineEnd(c, end)));
  }

  @Test
  void everyCaseWasReallyRead() throws IOException {
    List<Case> cases = cases();
    assertTrue(cases.size() >= AT_LEAST, "only " + cases.size() + " cases");
    assertTrue(cases.stream().noneMatch(c -> c.why().isBlank()), "a case without its reason");
    assertEquals(cases.size(), cases.stream().map(Case::name).distinct().count());
  }

  @Test
  void readsTheSameInTurkishAndGerman() throws IOException {
    Locale before = Locale.getDefault();
    try {
      for (String tag : List.of("tr", "de", "ar-u-nu-arab")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        for (Case c : cases()) {
          assertEquals(c.expected(), dump(c.script()), tag + ": " + c.name());
        }
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  private static void check(Case c) {
    assertEquals(c.expected(), dump(c.script()), c.why());
    assertEquals(c.script(), read(c.script()).script().text());
    assertEquals(c.expected(), dump("\uFEFF" + c.script()), "with a byte order mark");
  }

  private static DynamicTest withLineEnd(Case c, String end) {
    String script = c.script().replace("\n", end);
    return DynamicTest.dynamicTest(
        c.name() + " U+" + Integer.toHexString(end.charAt(0)),
        () -> {
          assertEquals(c.expected(), dump(script));
          assertEquals(script, read(script).script().text());
        });
  }

  private static ReadScript read(String script) {
    return new ScriptReader().read(script, Keywords.ENGLISH);
  }

  private static String dump(String script) {
    return ScriptDump.of(read(script));
  }

  static List<Case> cases() throws IOException {
    String text = Files.readString(FILE);
    List<Case> cases = new ArrayList<>();
    StringBuilder accepted = new StringBuilder(text.substring(0, text.indexOf("\n=== ")));
    for (String part : text.substring(text.indexOf("\n=== ") + 5).split("\n=== ", -1)) {
      int script = part.indexOf("--- script\n");
      int read = part.indexOf("--- read\n");
      String head = part.substring(0, script);
      String name = head.substring(0, head.indexOf('\n'));
      String body = part.substring(script + "--- script\n".length(), read);
      String expected = part.substring(read + "--- read\n".length()).strip() + "\n";
      if (expected.equals("accept\n") && ACCEPT) {
        expected = dump(body);
      }
      cases.add(new Case(name, head.substring(name.length()).strip(), body, expected));
      accepted.append("\n=== ").append(part, 0, read).append("--- read\n").append(expected);
    }
    if (ACCEPT) {
      Files.writeString(FILE, accepted);
    }
    return cases;
  }
}
