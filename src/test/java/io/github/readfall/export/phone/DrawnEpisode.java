package io.github.readfall.export.phone;

import io.github.readfall.base.files.Cancelled;
import io.github.readfall.base.files.CannotWrite;
import io.github.readfall.base.files.OutputFolder;
import io.github.readfall.base.files.Progress;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.export.Kind;
import io.github.readfall.export.Order;
import io.github.readfall.export.Prepared;
import io.github.readfall.job.Proofer;
import io.github.readfall.job.polyglot.FittedEdition;
import io.github.readfall.lettering.typeset.Sample;
import io.github.readfall.script.Cue;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.strip.galley.Galley;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * An episode written out as a phone proof and transcripts.
 *
 * @param files in the order in which they were written
 * @param galleys the strip in every language, the original's first
 */
public record DrawnEpisode(List<Path> files, Map<String, Galley> galleys) {

  /** The first sample episode. */
  static final Path EPISODE = Path.of("sample-scripts/overdue-tide/ep01");

  /** It in all its languages, drawn once for all tests. */
  private static final class First {
    static final DrawnEpisode DRAWN = of(EPISODE, List.of(), Path.of("target/drawn-html"));
  }

  public static DrawnEpisode sample() {
    return First.DRAWN;
  }

  /**
   * Draws an episode.
   *
   * @param languages those that are wanted; none for all
   */
  static DrawnEpisode of(Path episode, List<String> languages, Path folder) {
    Order order = new Order(Set.of(Kind.PHONE, Kind.TRANSCRIPT), languages);
    try {
      EpisodeFiles read = EpisodeFiles.at(episode).get(0);
      Prepared prepared = Prepared.of(order, read, new Proofer(Sample.shelf(), () -> 0));
      Map<String, Galley> galleys = new LinkedHashMap<>();
      Galley original = prepared.proof().original().galley();
      galleys.put(original.set().script().language(), original);
      for (FittedEdition edition : prepared.proof().matrix().editions()) {
        galleys.put(edition.edition().language(), edition.galley());
      }
      List<Path> files =
          new OutputFolder(folder, true).write(prepared.batches(), Progress.UNWATCHED);
      return new DrawnEpisode(files, galleys);
    } catch (UnusablePath | CannotWrite | Cancelled e) {
      throw new AssertionError(e);
    }
  }

  /** The strip in a language. */
  public Galley galley(String language) {
    return Optional.ofNullable(galleys.get(language)).orElseThrow();
  }

  /** The file whose name ends so. */
  public Path file(String ending) {
    return files.stream()
        .filter(file -> file.toString().endsWith(ending))
        .findFirst()
        .orElseThrow();
  }

  /** What a language's script says, cue by cue, white space left out. */
  public List<String> said(String language) {
    return galley(language).set().script().cues().stream()
        .map(Cue::text)
        .map(text -> bare(text.plain()))
        .toList();
  }

  /** A text without its white space. */
  public static String bare(String text) {
    return text.replaceAll("\\s", "");
  }
}
