package io.github.readfall.window.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.lettering.style.LookKey;
import io.github.readfall.lettering.toml.TomlValue;
import io.github.readfall.lettering.toml.TomlValue.Figure;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.Manner;
import io.github.readfall.series.EpisodeFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StyleModelTest {

  private static final String SCRIPT =
      """
      Cast: Ilse, Old Wouter (elder)

      PANEL 1

      ILSE: It turns.
      OLD WOUTER (whisper): Leave it be.
      CAPTION: Spring.
      SFX: KRRANK
      """;

  private static final String TOML =
      """
      # ours
      [voices.Ilse]
      size = 1.2 # loud
      [voices.elder]
      slant = 4
      [manners."whispers"]
      size = 0.9
      [limits]
      "words/long" = "many"
      """;

  private static final StyleEntry ILSE = entry("ILSE", LookKey.SIZE);

  private final Path toml;
  private final EpisodeFiles files;
  private final TestModels.Queue disk = new TestModels.Queue();
  private final Recorder recorder = new Recorder();
  private final StyleModel model =
      new StyleModel(ModelThreads.none(), disk::add, recorder, "Nobody says anything.");

  StyleModelTest(@TempDir Path folder) throws Exception {
    toml = folder.resolve("series.toml");
    Files.writeString(toml, TOML);
    Path script = folder.resolve("ep01").resolve("script.txt");
    Files.createDirectories(script.getParent());
    Files.writeString(script, SCRIPT);
    files = EpisodeFiles.at(script).get(0);
  }

  @BeforeEach
  void openTheModel() {
    model.open(files);
    disk.run();
    model.setEpisode(TestModels.at(files.script(), SCRIPT).with(SCRIPT));
  }

  private static StyleEntry entry(String voice, LookKey key) {
    return new StyleEntry(new StyleSubject.Voice(voice), Optional.of(key));
  }

  private static Optional<TomlValue> size(double size) {
    return Optional.of(new Figure(size));
  }

  private String file() throws IOException {
    return Files.readString(toml);
  }

  /** Records the calls of a listener. */
  private static final class Recorder implements StyleModelListener {
    private final List<StyleSnapshot> shown = new ArrayList<>();
    private final List<Optional<Specimen>> specimens = new ArrayList<>();
    private final List<String> refused = new ArrayList<>();
    private int written;

    @Override
    public void shown(StyleSnapshot style) {
      shown.add(style);
    }

    @Override
    public void previewed(StyleSnapshot style, Optional<Specimen> specimen) {
      specimens.add(specimen);
    }

    @Override
    public void written() {
      written++;
    }

    @Override
    public void refused(String sentence) {
      refused.add(sentence);
    }

    @Override
    public void failed(Throwable fault) {
      throw new AssertionError(fault);
    }

    private Specimen specimen() {
      return specimens.get(specimens.size() - 1).orElseThrow();
    }
  }

  @Test
  void aValueIsWrittenUnderTheNameThatTheFileHas() throws Exception {
    model.write(ILSE, size(1.4));
    disk.run();
    assertEquals(TOML.replace("1.2 #", "1.4 #"), file());
    assertEquals(1, recorder.written);
    model.write(
        new StyleEntry(new StyleSubject.MannerLook(Manner.WHISPER), Optional.of(LookKey.SIZE)),
        size(0.8));
    disk.run();
    assertTrue(file().contains("[manners.\"whispers\"]\nsize = 0.8\n"));
    assertEquals(List.of(), recorder.refused);
  }

  @Test
  void theLastChangeIsTakenBackToTheByte() throws Exception {
    model.write(ILSE, Optional.empty());
    disk.run();
    assertEquals(TOML.replace("size = 1.2 # loud", "# loud"), file());
    assertTrue(model.canRevert());
    model.revert();
    disk.run();
    assertEquals(TOML, file());
    assertFalse(model.canRevert());
    assertTrue(model.shown().says(ILSE));
  }

  @Test
  void twoChangesThatComeFasterThanTheDiskAreBothWritten() throws Exception {
    model.write(ILSE, size(1.4));
    model.readAgain();
    model.write(entry("elder", LookKey.SIZE), size(2));
    while (disk.waiting() > 0) {
      disk.run();
    }
    assertEquals(
        TOML.replace("1.2 #", "1.4 #").replace("slant = 4\n", "slant = 4\nsize = 2\n"), file());
    assertEquals(file(), model.shown().text().orElseThrow().text());
  }

  @Test
  void whatOthersWroteMeanwhileIsNotOverwritten() throws Exception {
    Files.writeString(toml, "# theirs\n");
    model.write(ILSE, size(1.4));
    disk.run();
    disk.run();
    assertEquals("# theirs\n", file());
    assertEquals(1, recorder.refused.size());
    assertFalse(model.canRevert());
    assertFalse(model.shown().says(ILSE));
  }

  @Test
  void aFileThatIsNoTomlIsShownButNotChanged() throws Exception {
    Files.writeString(toml, "[voices.Ilse]\nsize = 1.5\nslant = ,\n");
    model.readAgain();
    disk.run();
    assertEquals(1.5, model.shown().style().voice("Ilse").orElseThrow().size().orElseThrow());
    assertTrue(model.shown().remark().orElseThrow().contains("line 3"));
    model.write(ILSE, size(1.4));
    disk.run();
    assertEquals("[voices.Ilse]\nsize = 1.5\nslant = ,\n", file());
  }

  @Test
  void aValueIsTriedOnTheBalloonBeforeItIsWritten() throws Exception {
    model.selectSubject(new StyleSubject.Voice("ILSE"));
    double before = recorder.specimen().arcmin();
    model.preview(ILSE, size(1.8));
    assertEquals(before * 1.8 / 1.2, recorder.specimen().arcmin(), 0.01);
    model.preview(ILSE, size(0.5));
    assertEquals(
        List.of("legible/small-voice"),
        recorder.specimen().findings().stream().map(found -> found.rule()).toList());
    assertEquals(TOML, file());
    assertEquals(0, recorder.written);
  }

  @Test
  void theReadersMessageBelongsToItsValue() {
    StyleEntry limit = new StyleEntry(new StyleSubject.Limit("words/long"), Optional.empty());
    assertTrue(model.shown().complaint(limit).orElseThrow().contains("\"many\""));
    assertEquals(Optional.empty(), model.shown().complaint(ILSE));
    model.selectSubject(limit.subject());
    assertEquals(Optional.empty(), recorder.specimens.get(recorder.specimens.size() - 1));
  }

  @ParameterizedTest
  @CsvSource({
    "elder, Leave it be., DIALOGUE, whisper",
    "Ilse, It turns., DIALOGUE, ''",
    "default, It turns., DIALOGUE, ''",
    "nobody, It turns., DIALOGUE, ''"
  })
  void aVoiceIsShownWithItsOwnWordsIfItHasAny(
      String voice, String words, CueKind kind, String manner) {
    model.selectSubject(new StyleSubject.Voice(voice));
    isSaid(words, kind, manner);
  }

  @ParameterizedTest
  @CsvSource({
    "whisper, Leave it be., DIALOGUE, whisper",
    "shout, It turns., DIALOGUE, shout",
    "caption, Spring., CAPTION, ''",
    "sound effect, KRRANK, EFFECT, ''"
  })
  void aMannerIsShownWithWordsThatAreSaidInIt(
      String manner, String words, CueKind kind, String spoken) {
    model.selectSubject(new StyleSubject.MannerLook(Manner.of(manner)));
    isSaid(words, kind, spoken);
  }

  /** #AAA on white is 2.3 : 1, cut off (W3C, ACT rule afw4f7, "Text has minimum contrast"). */
  @Test
  void theContrastOfLettersWithTheBalloonIsReported() {
    model.selectSubject(new StyleSubject.Voice("ILSE"));
    model.preview(entry("ILSE", LookKey.TEXT), Optional.of(new TomlValue.Words("#aaaaaa")));
    assertEquals(2.3, Math.floor(recorder.specimen().contrast().orElseThrow() * 10) / 10);
    assertTrue(
        recorder.specimen().findings().stream()
            .anyMatch(found -> found.rule().equals("legible/contrast")));
    model.selectSubject(new StyleSubject.MannerLook(Manner.EFFECT));
    assertTrue(recorder.specimen().contrast().isEmpty());
  }

  private void isSaid(String words, CueKind kind, String manner) {
    var cue = recorder.specimen().balloon().cue();
    assertEquals(words, cue.text().plain());
    assertEquals(kind, cue.kind());
    assertEquals(manner, String.join(" ", cue.manners().stream().map(Manner::word).toList()));
  }

  @Test
  void aScriptWithoutASeriesHasTheBuiltInStyleAndWritesNothing() throws Exception {
    model.open(new EpisodeFiles(files.script(), Optional.empty()));
    disk.run();
    assertEquals(Optional.empty(), model.shown().text());
    model.write(ILSE, size(3));
    disk.run();
    assertEquals(TOML, file());
  }
}
