package io.github.readfall.series;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.languages.translate.State;
import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.languages.xliff.Matched;
import io.github.readfall.languages.xliff.Merge;
import io.github.readfall.script.Cue;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TranslationFileTest {

  private static final String SCRIPT = "PANEL 1\nA: It is *late*.\nB: No.\n";

  private final EpisodeFiles files;
  private final Script script;
  private final TranslationFile german;

  TranslationFileTest(@TempDir Path folder) throws IOException, UnusablePath {
    Files.writeString(folder.resolve("script.txt"), SCRIPT);
    files = EpisodeFiles.at(folder).get(0);
    script = new ScriptReader().read(SCRIPT, Keywords.ENGLISH).script();
    german = TranslationFile.of(files, "de");
  }

  @Test
  void nothingIsThereAtFirst() throws Exception {
    assertEquals(List.of(), files.languages());
    assertEquals(Optional.empty(), german.read(script, Map.of()));
  }

  @Test
  void aTargetIsSavedAndReadAgain() throws Exception {
    var cue = script.cues().get(0);
    assertTrue(german.save(withTarget(german, script, cue, "Es ist *spät*.", State.FINAL).xliff()));
    assertEquals(List.of("de"), files.languages());
    ReadTranslation read = german.read(script, Map.of()).orElseThrow();
    TranslatedCue said = read.translation().cues().get(0);
    assertEquals("Es ist *spät*.", said.target());
    assertEquals(State.FINAL, said.state());
    assertEquals("language/missing", read.findings().get(0).rule());
    assertFalse(Files.exists(german.previous()));
    byte[] before = Files.readAllBytes(german.path());
    assertTrue(german.save(withTarget(german, script, cue, "So spät.", State.FINAL).xliff()));
    assertEquals(new String(before, StandardCharsets.UTF_8), Files.readString(german.previous()));
    assertEquals(List.of("de"), files.languages(), "the previous one is no language");
    assertFalse(german.save(german.matched(script).orElseThrow().xliff()), "nothing changed");
  }

  @Test
  void whatCannotBeReadStays() throws IOException {
    Files.createDirectories(german.path().getParent());
    Files.writeString(german.path(), "<xliff");
    String sentence =
        assertThrows(UnusablePath.class, () -> german.read(script, Map.of())).getMessage();
    assertTrue(sentence.contains("de.xlf, line 1: it is not well-formed XML"), sentence);
  }

  private static Matched withTarget(
      TranslationFile file, Script script, Cue cue, String raw, State state) throws Exception {
    Matched whole = Merge.of(file.orNew(script), Optional.empty(), Map.of());
    return whole.withTarget(cue, raw, state);
  }
}
