package io.github.readfall.export;

import io.github.readfall.outbox.Batch;
import io.github.readfall.pdf.ProofBatch;
import io.github.readfall.pdf.ProofStrip;
import java.util.List;

/** Makes batches of files of finished strips. */
public final class Exports {

  private Exports() {}

  /**
   * The files of one kind.
   *
   * @param strips one episode in one or more languages, each once
   */
  public static List<Batch> of(Kind kind, List<FinishedStrip> strips) {
    return switch (kind) {
      case LAYERS -> List.of();
      case SLICES -> List.of();
      case PROOF -> List.of(new ProofBatch(strips.stream().map(Exports::proof).toList()));
      case PHONE -> List.of();
      case TRANSCRIPT -> List.of();
      case SVG -> List.of();
      case PNG -> List.of();
    };
  }

  private static ProofStrip proof(FinishedStrip strip) {
    return new ProofStrip(
        strip.stem() + "-proof.pdf", strip.galley(), strip.findings(), strip.art(), strip.shelf());
  }
}
