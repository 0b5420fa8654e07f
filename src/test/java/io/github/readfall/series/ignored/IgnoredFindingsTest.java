package io.github.readfall.series.ignored;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptReader;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IgnoredFindingsTest {

  private static final String SCRIPT =
      """
      PANEL 1

      ILSE: It is "counting" again.

      WOUTER: Then let it count.

      PANEL 2

      ILSE: Listen.
      """;

  private static Script script(String text) {
    return new ScriptReader().read(text, Keywords.ENGLISH).script();
  }

  private static Finding crowded(String... balloons) {
    Where where =
        new Where(
            "", OptionalInt.empty(), OptionalInt.empty(), OptionalInt.of(1), List.of(balloons));
    return Finding.of("space/crowded", Severity.WARNING, where, "Too near.", "Move one.");
  }

  @Test
  void wordsInOtherLettersAreWrittenAsTheyAre() {
    Script script = script("PANEL 1\n\n일세: 다시 세고 있어.\n");

    String toml = IgnoredText.with("", crowded("p1-1"), script, "Überlappt \"absichtlich\".");

    assertTrue(toml.contains("cues = [\"일세: 다시 세고 있어.\"]"), toml);
    assertEquals("Überlappt \"absichtlich\".", read(toml).entries().get(0).reason());
  }

  private static IgnoredFindings read(String toml) {
    return IgnoredReader.read(toml, "ignored.toml");
  }

  @Test
  void aWrittenEntryIsReadAgainAndIgnoresThatFinding() {
    Script script = script(SCRIPT);
    Finding finding = crowded("p1-1", "p1-2");
    String toml = IgnoredText.with("", finding, script, "They talk  over\neach other.");

    IgnoredFindings ignored = read(toml);

    assertEquals(List.of(), ignored.findings());
    List<Finding> applied = ignored.applied(List.of(finding, crowded("p1-1")), script);
    assertEquals(
        List.of(Optional.of("They talk over each other."), Optional.empty()),
        applied.stream().map(Finding::reason).toList());
  }

  @Test
  void anEntryIsRecognisedAfterTheScriptChanged() {
    String toml = IgnoredText.with("", crowded("p1-1", "p1-2"), script(SCRIPT), "Meant.");
    Script later = script("PANEL\n\nWOUTER: Wait.\n\n" + SCRIPT.replace("again", "once more"));
    Finding now = crowded("p2-1", "p2-2");

    List<Finding> applied = read(toml).applied(List.of(now), later);

    assertEquals(Optional.of("Meant."), applied.get(0).reason());
    assertEquals(1, applied.size());
  }

  @Test
  void anEntryThatIgnoresNothingIsItselfFound() {
    String toml = IgnoredText.with("", crowded("p1-1", "p1-2"), script(SCRIPT), "Meant.");

    List<Finding> applied = read(toml).applied(List.of(crowded("p1-1")), script(SCRIPT));

    assertEquals(
        List.of("space/crowded", IgnoredFindings.NOTHING),
        applied.stream().map(Finding::rule).toList());
    assertTrue(applied.get(0).isOpen());
    assertEquals(OptionalInt.of(4), applied.get(1).where().line());
  }

  @Test
  void aFindingAboutAPanelOrTheEpisodeCanBeIgnoredToo() {
    String toml =
        """
        [[finding]]
        rule = "words/pace"
        panel = 2
        reason = "A list is read aloud here."

        [[finding]]
        rule = "plan/tall"
        reason = "The publisher agreed."
        """;
    Finding pace =
        Finding.of(
            "words/pace",
            Severity.WARNING,
            new Where("", OptionalInt.of(9), OptionalInt.empty(), OptionalInt.of(2), List.of()),
            "Fast.",
            "");
    Finding tall = Finding.of("plan/tall", Severity.WARNING, Where.everywhere(), "Tall.", "");

    List<Finding> applied = read(toml).applied(List.of(pace, tall), script(SCRIPT));

    assertEquals(2, applied.size());
    assertTrue(applied.stream().noneMatch(Finding::isOpen));
  }

  @Test
  void theRestOfTheFileStaysAsItIs() {
    String before = "# mine\n[[finding]]\nrule = \"flow/jump\"\nreason = \"so\"   # why\n";

    String after = IgnoredText.with(before, crowded("p1-1"), script(SCRIPT), "Meant.");

    assertTrue(after.startsWith(before), after);
    assertEquals(2, read(after).entries().size());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[[finding]]\nrule = \"flow/jump\"\n",
        "[[finding]]\nreason = \"so\"\n",
        "[[finding]]\nrule = 3\nreason = \"so\"\n",
        "finding = 3\n",
        "finding = [3]\n",
        "[[finding\n",
        "[[finding]]\nrule = \"a/b\"\nreason = \"  \"\n",
      })
  void anUnusableEntryIsReportedAndIgnoresNothing(String toml) {
    IgnoredFindings ignored = read(toml);

    assertEquals(List.of(), ignored.entries());
    assertTrue(
        ignored.findings().stream().allMatch(f -> f.rule().matches("ignored/(syntax|entry)")),
        ignored.findings().toString());
    assertTrue(!ignored.findings().isEmpty());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2})
  void anEntryIsRemovedAndTheOthersAndTheirCommentsStay(int which) {
    String head = "# Mine.\n\n";
    List<String> entries =
        List.of(
            "[[finding]]\nrule = \"a/b\"\npanel = 1\nreason = \"one\"\n\n",
            "# about two\n",
            "[[finding]]\nrule = \"c/d\"\ncues = [\n  \"ILSE: [Hm.]\",\n]\nreason = \"two\"\n\n",
            "# about three\n",
            "[[finding]]\nrule = \"e/f\"\nreason = \"three\"\n");
    String text = head + String.join("", entries);
    IgnoredFinding entry = read(text).entries().get(which);

    String after = IgnoredText.without(text, entry).orElseThrow();

    List<IgnoredFinding> left = read(after).entries();
    assertEquals(2, left.size());
    assertTrue(left.stream().noneMatch(other -> other.rule().equals(entry.rule())));
    assertTrue(after.startsWith(head));
    assertTrue(after.contains("# about two\n") && after.contains("# about three\n"));
  }

  @Test
  void anInlineEntryIsNotRemoved() {
    String text = "finding = [{rule = \"a/b\", reason = \"one\"}]\n";
    IgnoredFinding entry = read(text).entries().get(0);
    assertEquals(Optional.empty(), IgnoredText.without(text, entry));
  }

  @Test
  void aFindingThatIsIgnoredAndThenNotIsFoundAsBefore() {
    Script script = script(SCRIPT);
    Finding finding = crowded("p1-1", "p1-2");
    String before = IgnoredText.with("", crowded("p1-1"), script, "Small.");
    String with = IgnoredText.with(before, finding, script, "They talk over each other.");
    IgnoredFinding entry = read(with).entryOf(finding, script).orElseThrow();
    assertEquals("They talk over each other.", entry.reason());
    String after = IgnoredText.without(with, entry).orElseThrow();
    assertEquals(before.strip(), after.strip());
    assertEquals(Optional.empty(), read(after).entryOf(finding, script));
  }
}
