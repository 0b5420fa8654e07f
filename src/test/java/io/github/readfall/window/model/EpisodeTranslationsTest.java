package io.github.readfall.window.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.languages.translate.State;
import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptReader;
import io.github.readfall.series.EpisodeFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EpisodeTranslationsTest {

  private static final String TEXT =
      """
      Title: Ebb
      Language: en

      PANEL 1
      The mill.

      ILSE: It *turns* / again.
      WOUTER: Leave it be.
      """;

  private final Script script =
      new ScriptReader().read(TEXT, HouseStyle.DEFAULT.keywords()).script();
  private final EpisodeFiles files;
  private final EpisodeTranslations translations;

  EpisodeTranslationsTest(@TempDir Path folder) throws Exception {
    Files.writeString(folder.resolve("script.txt"), TEXT);
    files = EpisodeFiles.at(folder).get(0);
    translations = new EpisodeTranslations(files);
  }

  private TranslatedCue read(int cue) throws UnusablePath {
    return translations.read("de", script).cues().get(cue);
  }

  @Test
  void whatIsSavedIsReadAgainWithItsMarkupAndState() throws Exception {
    assertEquals(List.of(), translations.languages());
    translations.save("de", script, read(0).saying("Es *dreht* / sich <wieder>."));
    translations.save("de", script, read(1).saying("Lass es.").marked(State.FINAL));
    assertEquals(List.of("de"), translations.languages());
    assertEquals("Es *dreht* / sich <wieder>.", read(0).target());
    assertEquals(State.TRANSLATED, read(0).state());
    assertEquals("Lass es.", read(1).target());
    assertEquals(State.FINAL, read(1).state());
  }

  @Test
  void wordsCanBeTakenAway() throws Exception {
    translations.save("de", script, read(0).saying("Es dreht sich."));
    translations.save("de", script, read(0).saying(""));
    assertFalse(read(0).isTranslated());
    assertEquals(State.INITIAL, read(0).state());
  }

  @Test
  void whatWasTranslatedBeforeTheScriptChangedIsStaleUntilItIsSavedAnew() throws Exception {
    translations.save("de", script, read(0).saying("Es dreht sich."));
    Script other =
        new ScriptReader()
            .read(TEXT.replace("again", "again and again"), HouseStyle.DEFAULT.keywords())
            .script();
    TranslatedCue stale = translations.read("de", other).cues().get(0);
    assertTrue(stale.isStale());
    translations.save("de", other, stale.marked(State.REVIEWED));
    TranslatedCue saved = translations.read("de", other).cues().get(0);
    assertFalse(saved.isStale());
    assertEquals(State.REVIEWED, saved.state());
  }

  @Test
  void aFileThatIsNoTranslationIsReportedAndNotChanged() throws Exception {
    Path file = files.languagesFolder().resolve("de.xlf");
    Files.createDirectories(files.languagesFolder());
    Files.writeString(file, "no markup");
    UnusablePath told = assertThrows(UnusablePath.class, () -> translations.read("de", script));
    assertTrue(String.valueOf(told.getMessage()).contains("de.xlf"), told.getMessage());
    TranslatedCue cue = TranslatedCue.untranslated(script.cues().get(0)).saying("Es dreht sich.");
    assertThrows(UnusablePath.class, () -> translations.save("de", script, cue));
    assertEquals("no markup", Files.readString(file));
  }
}
