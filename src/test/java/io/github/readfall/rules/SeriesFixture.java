package io.github.readfall.rules;

import io.github.readfall.job.Proofer;
import io.github.readfall.job.StripProof;
import io.github.readfall.rules.voice.SeriesStrip;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.type.font.OpenFaces;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A tiny series on disk, and what a rule has to find in it. */
record SeriesFixture(List<SeriesStrip> strips, List<String> expected) {

  static SeriesFixture read(Path folder) throws Exception {
    return new SeriesFixture(strips(folder), Files.readAllLines(folder.resolve("expect.txt")));
  }

  /** Sets every episode; one whose layout or style is at fault would test something else. */
  static List<SeriesStrip> strips(Path folder) throws Exception {
    Proofer proofer = new Proofer(OpenFaces.shelf(), () -> 0);
    List<SeriesStrip> strips = new ArrayList<>();
    for (EpisodeFiles files : EpisodeFiles.at(folder)) {
      StripProof proof = proofer.check(files);
      if (proof.episode().findings().stream()
          .anyMatch(found -> found.rule().matches("(layout|style)/.*"))) {
        throw new AssertionError(proof.episode().findings());
      }
      String path = folder.relativize(files.script()).toString().replace('\\', '/');
      strips.add(new SeriesStrip(path, proof.galley()));
    }
    return strips;
  }
}
