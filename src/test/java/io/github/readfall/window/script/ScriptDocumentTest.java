package io.github.readfall.window.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.script.Keywords;
import io.github.readfall.script.LineKind;
import io.github.readfall.script.RandomScript;
import io.github.readfall.script.SourceLine;
import io.github.readfall.script.read.ScriptReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScriptDocumentTest {

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void isNeverOutOfDate(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    ScriptDocument document = new ScriptDocument();
    document.become(LineEnds.withLineFeeds(RandomScript.sound(random)));
    String first = document.text();
    document.history().clear();
    for (int edit = 0; edit < 100; edit++) {
      edit(document, random);
      List<LineKind> fresh =
          new ScriptReader()
              .read(document.text(), Keywords.ENGLISH).script().lines().stream()
                  .map(SourceLine::kind)
                  .toList();
      for (int line = 1; line <= document.lineCount(); line++) {
        LineKind kind = line > fresh.size() ? LineKind.BLANK : fresh.get(line - 1);
        assertEquals(kind, document.lines().kind(line));
      }
    }
    String last = document.text();
    while (document.history().canUndo()) {
      document.undo();
    }
    assertEquals(first, document.text());
    while (document.history().canRedo()) {
      document.redo();
    }
    assertEquals(last, document.text());
  }

  private static void edit(ScriptDocument document, SplittableRandom random) {
    int start = random.nextInt(document.getLength() + 1);
    int end = Math.min(document.getLength(), start + random.nextInt(12));
    String piece = LineEnds.withLineFeeds(RandomScript.withSlips("", random));
    document.put(start, random.nextBoolean() ? start : end, random.nextInt(3) == 0 ? "" : piece);
  }

  @Test
  void takesBackAWordAtATime() {
    ScriptDocument document = new ScriptDocument();
    type(document, "The mill stands");
    document.undo();
    assertEquals("The mill ", document.text());
    document.undo();
    assertEquals("The ", document.text());
    document.redo();
    assertEquals("The mill ", document.text());
  }

  @Test
  void takesBackAnExchangeAtOnce() {
    ScriptDocument document = new ScriptDocument();
    type(document, "mill");
    document.put(0, 4, "wheel");
    document.undo();
    assertEquals("mill", document.text());
    document.undo();
    assertEquals("", document.text());
    assertFalse(document.history().canUndo());
  }

  @Test
  void cannotRedoWhatWasTypedOver() {
    ScriptDocument document = new ScriptDocument();
    type(document, "a b");
    document.undo();
    assertTrue(document.history().canRedo());
    type(document, "c");
    assertFalse(document.history().canRedo());
  }

  @Test
  void saysOnceThatSeveralEditsWereMade() {
    ScriptDocument document = new ScriptDocument();
    document.become("one two");
    List<String> heard = new ArrayList<>();
    document.onChange(() -> heard.add(document.text()));
    document.become("one three");
    document.undo();
    assertEquals(List.of("one three", "one two"), heard);
  }

  @Test
  void readsByItsKeywords() {
    ScriptDocument document = new ScriptDocument();
    document.become("컷 1\n비\n");
    assertEquals(LineKind.STRAY, document.lines().kind(1));
    assertTrue(document.readBy(new Keywords("컷", "장면", "자막", "효과", Map.of())));
    assertEquals(LineKind.PANEL, document.lines().kind(1));
  }

  @Test
  void hasNoLineEndsButItsOwn() {
    ScriptDocument document = new ScriptDocument();
    document.put(0, 0, "a\r\nb\u2028c");
    assertEquals("a\nb\nc", document.text());
  }

  private static void type(ScriptDocument document, String text) {
    for (int i = 0; i < text.length(); i++) {
      int end = document.getLength();
      document.put(end, end, text.substring(i, i + 1));
    }
  }
}
