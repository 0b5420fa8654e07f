package io.github.readfall.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.Endurance;
import io.github.readfall.script.read.ReadScript;
import io.github.readfall.script.read.ScriptReader;
import java.time.Duration;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Holds the reader to a time that grows with the script and no faster. */
class ScriptPaceTest {

  /** Far above what a linear reader takes, far below what a quadratic one would. */
  private static final Duration ENOUGH = Duration.ofSeconds(Endurance.rounds(6, 10));

  private static final int LONG = Endurance.rounds(50_000, 200_000);
  private static final int MANY = Endurance.rounds(15_000, 60_000);

  @TestFactory
  Stream<DynamicTest> aLongLineOfNonsenseTakesNoTime() {
    return Stream.of(
            "(", ")", "()", "(a)", "(a,", "(a:", "*", "_", "*_", "*a ", "_a*b ", "**a ", "\\",
            "\\*", "/", " / ", "//", " //", " // ", ":", "：", "A", "A ", "a,", "A\u0301", "\u0301",
            "\u0301*", "\u200F", " ", "\u00A0", "한", "\uD800", "\u0000", "\u202E", "A:", "1:")
        .map(
            piece ->
                DynamicTest.dynamicTest(
                    "of <" + piece + ">",
                    () -> {
                      String line = piece.repeat(LONG / piece.length());
                      readInTime(
                          "PANEL\n" + line + "\nILSE: " + line + "\nILSE (" + line + "): a\n");
                      readInTime(line);
                      readInTime(
                          "Cast: " + line + "\nPANEL " + line + "\n" + line + ": b\nOTTO: c\n");
                    }));
  }

  @TestFactory
  Stream<DynamicTest> manyLinesOfNonsenseTakeNoTime() {
    return Stream.of(
            "ILSE",
            "Title: a",
            "Cast: a,",
            "Mood: b",
            "ILSE: *a",
            "ilse: b",
            "//",
            "SCENE",
            "PANEL 1",
            "a")
        .map(
            line ->
                DynamicTest.dynamicTest(
                    line,
                    () -> {
                      readInTime(lines(i -> line));
                      readInTime("PANEL\nILSE: a\n" + lines(i -> line));
                    }));
  }

  @Test
  void aCrowdOfSpeakersTakesNoTime() {
    String cast =
        IntStream.range(0, 10_000).mapToObj(i -> "Guard" + i).collect(Collectors.joining(", "));
    readInTime(
        "Cast: " + cast + "\nPANEL\n" + lines(i -> "QUARD" + i + ": a\nquard" + i + ": b\n"));
  }

  @Test
  void aMillionWordsAreReadAndToldToBeTooMany() {
    String line = "word ".repeat(1_000) + "\n";
    ReadScript read = readInTime("PANEL\nILSE: " + line.repeat(1_000));
    assertEquals(1_000_000, read.script().cues().get(0).text().words());
    assertTrue(read.script().cues().get(0).text().isTooLong());
    assertEquals("script/long-cue", read.findings().get(0).rule());
    assertEquals("p1-1", read.findings().get(0).where().balloons().get(0));
    assertEquals(1_000_000, read.findings().get(0).measurement().orElseThrow().measured());
  }

  @Test
  void aLongSeriesIsReadWholeInTime() {
    String script =
        IntStream.rangeClosed(1, 20_000)
            .mapToObj(
                i ->
                    "PANEL "
                        + i
                        + "  long shot\nThe mill.\nILSE (off): It is *counting* "
                        + i
                        + ".\n")
            .collect(Collectors.joining());
    ReadScript read = readInTime(script);
    assertEquals(20_000, read.script().panels().size());
    assertEquals(20_000, read.script().cues().size());
    assertTrue(read.findings().isEmpty());
  }

  private static String lines(IntFunction<String> line) {
    return IntStream.range(0, MANY).mapToObj(line).collect(Collectors.joining("\n"));
  }

  private static ReadScript readInTime(String script) {
    return assertTimeoutPreemptively(
        ENOUGH,
        () -> {
          ReadScript read = new ScriptReader().read(script, Keywords.ENGLISH);
          assertEquals(script, read.script().text());
          return read;
        });
  }
}
