package io.github.readfall.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.finding.Finding;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Holds reading and writing to what must be true of any text. */
class ScriptRoundTripTest {

  private static final int ROUNDS = 1_000;

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

  @ParameterizedTest
  @ValueSource(longs = {7, 8, 9})
  void newWordsChangeNoLineOfAnyOtherBlock(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int changed = 0;
    for (int i = 0; i < ROUNDS; i++) {
      Script script = read(RandomScript.withSlips(RandomScript.sound(random), random)).script();
      List<Cue> cues = script.cues();
      if (!cues.isEmpty()) {
        checkNewWords(script, cues.get(random.nextInt(cues.size())), RandomScript.words(random));
        changed++;
      }
    }
    assertTrue(changed > ROUNDS / 10, "only " + changed + " scripts had a cue");
  }

  @Test
  void newWordsStandWhereTheOldOnesBegan() {
    Script script =
        read("PANEL\r\nILSE: One // hm\r\ntwo\r\n//no\r\nthree\r\n\r\nOTTO\r\nfour").script();
    assertEquals(
        "PANEL\r\nILSE: 1 *2* // hm\r\n//no\r\n\r\nOTTO\r\nfour",
        script.withCueText("p1-1", " 1\n*2* ").text());
    assertEquals(
        "PANEL\r\nILSE: One // hm\r\ntwo\r\n//no\r\nthree\r\n\r\nOTTO\r\n4",
        script.withCueText("p1-2", "4").text());
  }

  @Test
  void newWordsThatReadLikeAPanelGoBehindTheName() {
    Script script = read("PANEL\nOTTO\nfour\n").script().withCueText("p1-1", "PANEL 3 is wet");
    assertEquals("PANEL\nOTTO: PANEL 3 is wet\n", script.text());
    assertEquals("PANEL 3 is wet", script.cues().get(0).text().plain());
  }

  @Test
  void newWordsWithSlashesAreNoNote() {
    Script script = read("PANEL\nOTTO: four").script().withCueText("p1-1", "// a // b");
    assertEquals("// a // b", script.cues().get(0).text().plain());
  }

  @Test
  void noWordsLeaveNoCue() {
    Script script = read("PANEL\nOTTO: four\nILSE: five\n").script().withCueText("p1-1", "  ");
    assertEquals("PANEL\nOTTO: \nILSE: five\n", script.text());
    assertEquals(1, script.cues().size());
  }

  @Test
  void wordsForNoCueAreRefused() {
    Script script = read("PANEL\n").script();
    assertThrows(IllegalArgumentException.class, () -> script.withCueText("p1-1", "a"));
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

  private static void checkNewWords(Script script, Cue cue, String words) {
    Script changed = script.withCueText(cue.id(), words);
    LineRange range = script.linesOf(cue);
    List<SourceLine> before = script.lines().subList(0, range.first() - 1);
    List<SourceLine> after = script.lines().subList(range.last(), script.lines().size());
    List<SourceLine> all = changed.lines();
    String told = script.text() + "\n--- " + cue + "\n--- " + words + "\n--- " + changed.text();
    assertEquals(written(before), written(all.subList(0, before.size())), told);
    assertEquals(written(after), written(all.subList(all.size() - after.size(), all.size())), told);
    String oneLine = words.replaceAll("[\r\n\u0085\u2028\u2029]", " ");
    String meant = CueText.of(oneLine.replaceAll("^[\\h\\s]+|[\\h\\s]+$", "")).plain();
    if (!Letters.isBlank(meant)) {
      assertEquals(meant, changed.cue(cue.id()).orElseThrow().text().plain(), told);
    }
  }

  private static List<String> written(List<SourceLine> lines) {
    return lines.stream().map(line -> line.text() + line.ending()).toList();
  }

  private static ReadScript read(String text) {
    return new ScriptReader().read(text, Keywords.ENGLISH);
  }
}
