package io.github.readfall.export;

import io.github.readfall.outbox.Batch;
import io.github.readfall.transcript.Transcriber;
import io.github.readfall.transcript.TranscriptFiles;
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
      case PROOF -> List.of();
      case PHONE -> List.of();
      case TRANSCRIPT -> strips.stream().map(Exports::transcript).toList();
      case SVG -> List.of();
      case PNG -> List.of();
    };
  }

  private static Batch transcript(FinishedStrip strip) {
    return new TranscriptFiles(strip.stem(), Transcriber.of(strip.galley(), strip.original()));
  }
}
