package io.github.readfall.series;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptReader;
import io.github.readfall.series.ignored.IgnoredFinding;
import io.github.readfall.series.ignored.IgnoredFindings;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class IgnoredFileTest {

  private static final String FORMER_ENTRY =
      """
      # Agreed with the editor.
      [[finding]]
      rule = "plan/tall"
      reason = "The publisher agreed."
      """;

  private final Script script =
      new ScriptReader().read("PANEL 1\n\nILSE: Listen.\n", Keywords.ENGLISH).script();
  private final Path ignored;
  private final Path former;
  private final IgnoredFile file;

  IgnoredFileTest(@TempDir Path episode) throws Exception {
    Path path = Files.writeString(episode.resolve("script.txt"), "PANEL 1\n\nILSE: Listen.\n");
    file = IgnoredFile.of(EpisodeFiles.at(path).get(0));
    ignored = episode.resolve("ignored.toml");
    former = episode.resolve("set-aside.toml");
  }

  @BeforeEach
  void startsWithoutEitherFile() {
    assertFalse(Files.exists(ignored) || Files.exists(former));
  }

  private static Finding tall() {
    return Finding.of("plan/tall", Severity.WARNING, Where.everywhere(), "Tall.", "");
  }

  private static Finding small() {
    Where where =
        new Where("", OptionalInt.empty(), OptionalInt.empty(), OptionalInt.of(1), List.of("p1-1"));
    return Finding.of("legible/small", Severity.WARNING, where, "Small.", "");
  }

  private List<String> rules() throws UnusablePath {
    return file.read().entries().stream().map(IgnoredFinding::rule).toList();
  }

  @Test
  void withoutAFileNothingIsIgnored() throws Exception {
    assertEquals(List.of(), rules());
    assertEquals(List.of(), file.read().findings());
  }

  @Test
  void aNewFileHasThePresentName() throws Exception {
    file.add(tall(), script, "Agreed.");

    assertEquals(List.of("plan/tall"), rules());
    assertTrue(Files.exists(ignored));
    assertFalse(Files.exists(former));
  }

  @Test
  void aFileUnderTheFormerNameIsRead() throws Exception {
    Files.writeString(former, FORMER_ENTRY);

    IgnoredFindings read = file.read();

    assertEquals(List.of("plan/tall"), rules());
    assertEquals("set-aside.toml", read.fileName());
    assertEquals(List.of(), read.findings());
    assertFalse(Files.exists(ignored), "reading changes nothing");
  }

  @Test
  void ignoringAFindingMovesTheFormerFileWithAllItsEntries() throws Exception {
    Files.writeString(former, FORMER_ENTRY);

    file.add(small(), script, "A whisper.");

    assertEquals(List.of("plan/tall", "legible/small"), rules());
    assertTrue(Files.readString(ignored).startsWith(FORMER_ENTRY));
    assertFalse(Files.exists(former));
    assertEquals(List.of(), file.read().findings());
  }

  @Test
  void noLongerIgnoringAFindingMovesTheFormerFileToo() throws Exception {
    Files.writeString(former, FORMER_ENTRY + "\n[[finding]]\nrule = \"a/b\"\nreason = \"So.\"\n");

    file.remove(tall(), script);

    assertEquals(List.of("a/b"), rules());
    assertTrue(Files.exists(ignored));
    assertFalse(Files.exists(former), "its entry would ignore the finding again");
  }

  @Test
  void removingTheLastEntryDoesNotBringTheFormerFileBack() throws Exception {
    Files.writeString(former, FORMER_ENTRY);

    file.remove(tall(), script);

    assertEquals(List.of(), rules());
    assertFalse(Files.exists(former));
  }

  @Test
  void ofBothFilesThePresentOneCountsAndTheFormerIsReported() throws Exception {
    Files.writeString(ignored, "[[finding]]\nrule = \"a/b\"\nreason = \"So.\"\n");
    Files.writeString(former, FORMER_ENTRY);

    IgnoredFindings read = file.read();

    assertEquals(List.of("a/b"), rules());
    assertEquals(
        List.of(IgnoredFile.UNUSED_FILE), read.findings().stream().map(Finding::rule).toList());
    assertEquals("set-aside.toml", read.findings().get(0).where().file());
    file.add(tall(), script, "Agreed.");
    assertEquals(FORMER_ENTRY, Files.readString(former), "what is not read is not deleted");
  }

  @Test
  void aFindingThatIsNotIgnoredLeavesTheFilesAsTheyAre() throws Exception {
    Files.writeString(former, FORMER_ENTRY);

    UnusablePath refusal = assertThrows(UnusablePath.class, () -> file.remove(small(), script));

    assertTrue(String.valueOf(refusal.getMessage()).contains("set-aside.toml"));
    assertEquals(FORMER_ENTRY, Files.readString(former));
    assertFalse(Files.exists(ignored));
  }

  @Test
  void aFileThatCannotBeWrittenLeavesTheFormerAsItIs() throws Exception {
    Files.writeString(former, FORMER_ENTRY);
    IgnoredFile elsewhere =
        new IgnoredFile(ignored.resolveSibling("missing").resolve("ignored.toml"), former);

    assertThrows(UnusablePath.class, () -> elsewhere.add(small(), script, "A whisper."));

    assertEquals(FORMER_ENTRY, Files.readString(former));
  }
}
