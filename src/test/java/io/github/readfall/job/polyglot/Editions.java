package io.github.readfall.job.polyglot;

import io.github.readfall.languages.translate.State;
import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.languages.translate.Translation;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.Sample;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptReader;
import io.github.readfall.series.Episode;
import io.github.readfall.series.ignored.IgnoredFindings;
import io.github.readfall.type.font.FontShelf;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Episodes and their translations, written in a test. */
final class Editions {

  static final FontShelf SHELF = Sample.shelf();

  private Editions() {}

  /** An episode in English, one panel, its cues as they would be typed. */
  static Episode episode(String... cues) {
    String text = "Language: en\n\nPANEL 1 tall, height 2200\n\n" + String.join("\n", cues) + "\n";
    Script script = new ScriptReader().read(text, Keywords.ENGLISH).script();
    return new Episode(
        Path.of("script.txt"),
        script,
        HouseStyle.DEFAULT,
        HouseStyle.DEFAULT,
        SHELF,
        Optional.empty(),
        IgnoredFindings.NONE,
        List.of());
  }

  /** The episode with other words, cue by cue; what is empty is not translated. */
  static Edition edition(Episode episode, String language, String... targets) {
    return Edition.of(episode, translation(episode, language, targets));
  }

  static Translation translation(Episode episode, String language, String... targets) {
    List<TranslatedCue> cues =
        IntStream.range(0, targets.length)
            .mapToObj(
                i ->
                    new TranslatedCue(
                        episode.script().cues().get(i),
                        targets[i],
                        State.TRANSLATED,
                        Optional.empty()))
            .toList();
    return new Translation(language, cues);
  }
}
