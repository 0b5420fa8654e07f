package io.github.readfall.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.Endurance;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.script.read.ReadScript;
import io.github.readfall.script.read.ScriptReader;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Holds reading and writing to what must be true of any text. */
class ScriptRoundTripTest {

  private static final int ROUNDS = Endurance.rounds(300, 1_000);

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void anySoundScriptComesBackAsRead(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < ROUNDS; i++) {
      checkAll(RandomScript.sound(random));
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {4, 5, 6})
  void anyDamagedScriptIsReadAndComesBackAsRead(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < ROUNDS; i++) {
      checkAll(RandomScript.withSlips(RandomScript.sound(random), random));
    }
  }

  @Test
  void linesOfAPanelEndBeforeTheNext() {
    Script script = read("PANEL\nILSE: a\n\nPANEL\nRain.\nSCENE\n").script();
    assertEquals(new LineRange(1, 3), script.linesOf(script.panels().get(0)));
    assertEquals(new LineRange(4, 5), script.linesOf(script.panels().get(1)));
    assertEquals(new LineRange(2, 2), script.linesOf(script.cues().get(0)));
  }

  private static void checkAll(String text) {
    ReadScript read = read(text);
    Script script = read.script();
    assertEquals(text, script.text());
    assertEquals(read, read(text));
    for (Cue cue : script.cues()) {
      checkText(cue.text());
      assertEquals(cue, script.cue(cue.id()).orElseThrow());
      assertEquals(LineKind.CUE, script.lines().get(cue.line() - 1).kind());
    }
    read.findings().forEach(finding -> checkPlace(script, finding));
  }

  private static void checkText(CueText text) {
    assertFalse(Letters.isBlank(text.plain()));
    assertEquals(text.plain(), text.plain().replaceAll("[ \n]+(?=[ \n])|^[ \n]|[ \n]$", ""));
    int at = 0;
    for (Span span : text.spans()) {
      assertTrue(span.start() >= at && span.end() <= text.plain().length(), text.toString());
      at = span.end();
    }
  }

  private static void checkPlace(Script script, Finding finding) {
    int line = finding.where().line().orElseThrow();
    int column = finding.where().column().orElseThrow();
    assertTrue(line >= 1 && line <= Math.max(1, script.lines().size()), finding.toString());
    if (!script.lines().isEmpty()) {
      String text = script.lines().get(line - 1).text();
      assertTrue(
          column >= 1 && column <= text.codePointCount(0, text.length()) + 1, finding.toString());
    }
    assertTrue(finding.rule().startsWith("script/"));
    assertTrue(
        finding.message().endsWith(".") && finding.advice().endsWith("."), finding.toString());
  }

  private static ReadScript read(String text) {
    return new ScriptReader().read(text, Keywords.ENGLISH);
  }
}
