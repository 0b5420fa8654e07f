package io.github.readfall.job.polyglot;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import io.github.readfall.languages.reference.ExpectedLength;
import io.github.readfall.languages.reference.NoReferenceText;
import io.github.readfall.languages.reference.StandIn;
import io.github.readfall.languages.translate.Translation;
import io.github.readfall.script.Script;
import io.github.readfall.series.Episode;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.ReadTranslation;
import io.github.readfall.series.TranslationFile;
import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.Languages;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads an episode in other languages.
 *
 * @param standIns source of the lengths of stand-ins for missing words; empty to leave them missing
 */
public record EditionReader(Optional<ExpectedLengths> standIns) {

  /**
   * An episode in one language.
   *
   * @param tag BCP 47; not the script's own
   * @throws UnusablePath if there is a translation that cannot be read, or if no stand-in can be
   *     made
   */
  public Edition read(EpisodeFiles files, Episode episode, String tag) throws UnusablePath {
    Script script = episode.script();
    Optional<ReadTranslation> read = TranslationFile.of(files, tag).read(script, Map.of());
    Translation translation =
        read.map(ReadTranslation::translation).orElseGet(() -> Translation.empty(tag, script));
    List<Finding> findings = new ArrayList<>(read.map(ReadTranslation::findings).orElse(List.of()));
    if (standIns.isEmpty()) {
      return Edition.of(episode, translation).with(findings);
    }
    try {
      Language target = Languages.of(tag);
      ExpectedLength lengths = standIns.get().between(Languages.of(script.language()), target);
      lengths.caution().map(EditionReader::guess).ifPresent(findings::add);
      Translation standIn = StandIn.translation(script, target, lengths);
      return Edition.of(episode, translation, standIn).with(findings);
    } catch (NoReferenceText e) {
      throw new UnusablePath(e.getMessage());
    }
  }

  private static Finding guess(String caution) {
    return Finding.of(
        "language/guess",
        Severity.NOTE,
        Where.everywhere(),
        caution,
        "Use the measured lengths, or allow more room.");
  }

  /**
   * An episode in some languages, without its own.
   *
   * @param tags BCP 47
   * @throws UnusablePath if a translation cannot be read, or if no stand-in can be made
   */
  public List<Edition> readAll(EpisodeFiles files, Episode episode, List<String> tags)
      throws UnusablePath {
    List<Edition> editions = new ArrayList<>();
    for (String tag : tags) {
      if (!tag.equals(episode.script().language())) {
        editions.add(read(files, episode, tag));
      }
    }
    return List.copyOf(editions);
  }
}
