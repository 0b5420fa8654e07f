package io.github.readfall.export;

import io.github.readfall.art.ArtFiles;
import io.github.readfall.art.StripArt;
import io.github.readfall.export.transcript.Original;
import io.github.readfall.job.LanguagesProof;
import io.github.readfall.job.polyglot.Edition;
import io.github.readfall.job.polyglot.FittedEdition;
import io.github.readfall.script.Cue;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.type.font.FontShelf;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** An episode's strips, the original's first, over the art beside its script. */
final class FinishedStrips {

  private static final String SCRIPT = "script.txt";

  private FinishedStrips() {}

  /** The strips of a checked episode and of the translations that were set with it. */
  static List<FinishedStrip> of(EpisodeFiles files, LanguagesProof proof) {
    Galley galley = proof.original().galley();
    StripArt art = StripArt.of(ArtFiles.of(files.script()), (int) Math.round(galley.widthPx()));
    FontShelf shelf = proof.original().episode().shelf();
    String name = name(files.script());
    List<FinishedStrip> strips = new ArrayList<>();
    Original written = new Original(galley.set().script().language(), Set.of());
    strips.add(new FinishedStrip(name, galley, written, proof.original().findings(), art, shelf));
    for (FittedEdition edition : proof.matrix().editions()) {
      Original original = new Original(written.language(), untranslated(edition.edition()));
      strips.add(
          new FinishedStrip(name, edition.galley(), original, edition.findings(), art, shelf));
    }
    return List.copyOf(strips);
  }

  private static Set<String> untranslated(Edition edition) {
    return edition.script().cues().stream()
        .map(Cue::id)
        .filter(id -> !edition.isSaid(id))
        .collect(Collectors.toSet());
  }

  /** The name of an episode's files: its folder's, or the script's if it has another name. */
  private static String name(Path script) {
    Path absolute = script.toAbsolutePath().normalize();
    String own = String.valueOf(absolute.getFileName());
    Path folder = absolute.getParent();
    if (own.equals(SCRIPT) && folder != null && folder.getFileName() != null) {
      return folder.getFileName().toString();
    }
    int dot = own.lastIndexOf('.');
    return dot > 0 ? own.substring(0, dot) : own;
  }
}
