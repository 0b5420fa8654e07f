package io.github.readfall.script.assist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.script.Cue;
import io.github.readfall.script.CueText;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Letters;
import io.github.readfall.script.LineKind;
import io.github.readfall.script.LinePart;
import io.github.readfall.script.LineRange;
import io.github.readfall.script.PartKind;
import io.github.readfall.script.RandomScript;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;

class ScriptLinesTest {

  /** What stands above the line that a row of the table is about. */
  private static final Map<String, String> ABOVE =
      Map.of(
          "top", "",
          "cast", "Cast: Ilse,\n",
          "panel", "Cast: Ilse\nPANEL\n",
          "cue", "PANEL\nILSE: It is *not\n",
          "said", "PANEL\nILSE: It\n");

  static IntStream seeds() {
    return IntStream.range(0, 300);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(resources = "/script/line-parts.txt", delimiter = '|', quoteCharacter = '`')
  void takesALineToPieces(String above, String line, String kind, String parts) {
    String before = ABOVE.getOrDefault(above, "");
    ScriptLines lines = ScriptLines.read(before + line, Keywords.ENGLISH);
    int last = before.split("\n", -1).length;
    assertEquals(kind, lines.kind(last).name());
    assertEquals(parts == null ? "" : parts, print(line, lines.parts(last)));
  }

  private static String print(String line, List<LinePart> parts) {
    return parts.stream()
        .map(part -> part.kind() + "<" + line.substring(part.start(), part.end()) + ">")
        .collect(Collectors.joining(" "));
  }

  @Test
  void findsRenamedKeywords() {
    Keywords spanish = new Keywords("VIÑETA", "ESCENA", "CARTELA", "ONO", Map.of());
    ScriptLines lines = ScriptLines.read("ESCENA Molino\nVIÑETA 1  tall\nPANEL 2\n", spanish);
    assertEquals(LineKind.SCENE, lines.kind(1));
    assertEquals("KEYWORD<VIÑETA> LABEL<1> HINT<tall>", print("VIÑETA 1  tall", lines.parts(2)));
    assertEquals(LineKind.DESCRIPTION, lines.kind(3));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void agreesWithTheReader(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    String text = RandomScript.withSlips(RandomScript.sound(random), random);
    Script script = new ScriptReader().read(text, Keywords.ENGLISH).script();
    ScriptLines lines = ScriptLines.read(text, Keywords.ENGLISH);
    assertEquals(script.lines().size(), lines.count());
    for (int line = 1; line <= lines.count(); line++) {
      assertEquals(script.lines().get(line - 1).kind(), lines.kind(line));
      assertAreInOrder(script.lines().get(line - 1).text(), lines.parts(line));
    }
    for (Cue cue : script.cues()) {
      assertEquals(letters(cue.text()), letters(script, cue, lines), text);
    }
  }

  private static void assertAreInOrder(String line, List<LinePart> parts) {
    int end = 0;
    for (LinePart part : parts) {
      assertTrue(part.start() >= end && part.end() <= line.length(), () -> line + parts);
      end = part.end();
    }
  }

  /** The letters of a cue as the reader has them, each with how it stands out. */
  private static List<String> letters(CueText text) {
    List<String> letters = new ArrayList<>();
    for (int i = 0; i < text.plain().length(); i++) {
      int at = i;
      String look =
          text.spans().stream()
              .filter(span -> span.start() <= at && at < span.end())
              .map(span -> span.emphasis().name())
              .findFirst()
              .orElse("TEXT");
      add(letters, text.plain().charAt(i), look);
    }
    return letters;
  }

  /** The same as the parts of the cue's lines have them. */
  private static List<String> letters(Script script, Cue cue, ScriptLines lines) {
    List<String> letters = new ArrayList<>();
    LineRange range = script.linesOf(cue);
    boolean strong = false;
    boolean slanted = false;
    for (int line = range.first(); line <= range.last(); line++) {
      String text = script.lines().get(line - 1).text();
      for (LinePart part : lines.parts(line)) {
        strong ^= part.kind() == PartKind.SIGN && text.charAt(part.start()) == '*';
        slanted ^= part.kind() == PartKind.SIGN && text.charAt(part.start()) == '_';
        if (part.kind().isLettered()) {
          String look =
              part.kind() == PartKind.ESCAPE
                  ? PartKind.words(strong, slanted).name()
                  : part.kind().name();
          for (int i = part.start(); i < part.end(); i++) {
            if (part.kind() != PartKind.ESCAPE || (i - part.start()) % 2 == 1) {
              add(letters, text.charAt(i), look);
            }
          }
        }
      }
    }
    return letters;
  }

  private static void add(List<String> letters, char c, String look) {
    if (!Character.isWhitespace(c) && !(Character.isSurrogate(c) || Letters.isUnletterable(c))) {
      letters.add(c + look);
    }
  }
}
