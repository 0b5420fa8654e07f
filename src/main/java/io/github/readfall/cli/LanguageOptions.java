package io.github.readfall.cli;

import io.github.readfall.job.OtherLanguages;
import io.github.readfall.job.polyglot.EditionReader;
import io.github.readfall.job.polyglot.ExpectedLengths;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Option;

/** Other languages that balloons are to hold. */
final class LanguageOptions {

  @Option(
      names = "--languages",
      paramLabel = "TAG",
      split = ",",
      description = "Make every balloon large enough for these languages too, e.g. de,ko.")
  private List<String> tags = List.of();

  @Option(
      names = "--lengths",
      paramLabel = "SOURCE",
      defaultValue = "measured",
      description = {
        "Expected length of missing translations: ${COMPLETION-CANDIDATES}"
            + " (default: measured, from parallel texts)."
      })
  private ExpectedLengths lengths = ExpectedLengths.MEASURED;

  /** The languages that were asked for, each once, in their usual form. */
  static List<String> tags(List<String> typed) throws CannotProceed {
    Set<String> tags = new LinkedHashSet<>();
    for (String tag : typed) {
      tags.add(OneEpisode.language(tag.strip()));
    }
    return List.copyOf(tags);
  }

  /** Reads the languages; untranslated cues are expected to be of this length. */
  OtherLanguages others() throws CannotProceed {
    List<String> asked = tags(tags);
    EditionReader reader = new EditionReader(Optional.of(lengths));
    return (files, episode) -> reader.readAll(files, episode, asked);
  }
}
