package io.github.readfall.export.pdf;

import io.github.readfall.art.ArtFiles;
import io.github.readfall.art.StripArt;
import io.github.readfall.base.files.OutputTray;
import io.github.readfall.base.files.Progress;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.job.Proofer;
import io.github.readfall.job.StripProof;
import io.github.readfall.lettering.typeset.Sample;
import io.github.readfall.series.EpisodeFiles;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A proof that was made for a test.
 *
 * @param strip of what
 * @param pdf the file
 */
@SuppressWarnings("ArrayRecordComponent") // nobody writes to it
record Made(ProofStrip strip, byte[] pdf) {

  /** The strip of an episode that lies somewhere, as {@code draw} would have it. */
  static ProofStrip strip(Path episode) throws Exception {
    EpisodeFiles files = EpisodeFiles.at(episode).get(0);
    StripProof proof = new Proofer(Sample.shelf(), () -> 0).check(files);
    StripArt art =
        StripArt.of(ArtFiles.of(files.script()), (int) Math.round(proof.galley().widthPx()));
    return new ProofStrip(
        "proof.pdf", proof.galley(), proof.findings(), art, proof.episode().shelf());
  }

  /** The strip of a script. */
  static ProofStrip strip(Path folder, String script) throws Exception {
    Files.createDirectories(folder);
    Files.writeString(folder.resolve("script.txt"), script);
    return strip(folder);
  }

  /** A strip in which other things were found as well. */
  static ProofStrip with(ProofStrip strip, List<Finding> further) {
    List<Finding> findings = new ArrayList<>(strip.findings());
    findings.addAll(further);
    return new ProofStrip(strip.file(), strip.galley(), findings, strip.art(), strip.shelf());
  }

  static Made of(ProofStrip strip) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    OutputTray tray = name -> out;
    new ProofBatch(List.of(strip)).writeTo(tray, Progress.UNWATCHED);
    return new Made(strip, out.toByteArray());
  }

  Path in(Path folder) throws Exception {
    return Files.write(folder.resolve("proof.pdf"), pdf);
  }
}
