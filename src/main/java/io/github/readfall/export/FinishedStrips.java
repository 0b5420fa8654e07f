package io.github.readfall.export;

import io.github.readfall.art.ArtFiles;
import io.github.readfall.art.StripArt;
import io.github.readfall.finding.Finding;
import io.github.readfall.galley.Galley;
import io.github.readfall.polyglot.FittedEdition;
import io.github.readfall.proof.LanguagesProof;
import io.github.readfall.series.EpisodeFiles;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** An episode's strips, the original's first, over the art that lies beside its script. */
final class FinishedStrips {

  private static final String SCRIPT = "script.txt";

  private FinishedStrips() {}

  /** The strips of a checked episode and of the translations that were set with it. */
  static List<FinishedStrip> of(EpisodeFiles files, LanguagesProof proof) {
    Galley galley = proof.original().galley();
    StripArt art = StripArt.of(ArtFiles.of(files), (int) Math.round(galley.widthPx()));
    List<FinishedStrip> strips = new ArrayList<>();
    strips.add(strip(files, galley, proof.original().findings(), art, proof));
    for (FittedEdition edition : proof.matrix().editions()) {
      strips.add(strip(files, edition.galley(), edition.findings(), art, proof));
    }
    return List.copyOf(strips);
  }

  private static FinishedStrip strip(
      EpisodeFiles files,
      Galley galley,
      List<Finding> findings,
      StripArt art,
      LanguagesProof proof) {
    return new FinishedStrip(
        name(files.script()), galley, findings, art, proof.original().episode().shelf());
  }

  /** What an episode's files are called by: its folder, or the script where it has another name. */
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
