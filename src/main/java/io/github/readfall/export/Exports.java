package io.github.readfall.export;

import io.github.readfall.outbox.Batch;
import java.util.List;

/** Makes batches of files of finished strips. */
final class Exports {

  private Exports() {}

  /**
   * The files of one kind.
   *
   * @param strips one episode in one or more languages, each once
   */
  static List<Batch> of(Kind kind, List<FinishedStrip> strips) {
    return switch (kind) {
      case LAYERS -> List.of();
      case SLICES -> List.of();
      case PROOF -> List.of();
      case PHONE -> List.of();
      case TRANSCRIPT -> List.of();
      case SVG -> List.of();
      case PNG -> List.of();
    };
  }
}
