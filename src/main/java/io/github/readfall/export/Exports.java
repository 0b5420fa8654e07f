package io.github.readfall.export;

import io.github.readfall.outbox.Batch;
import io.github.readfall.phone.PhoneFile;
import io.github.readfall.phone.PhoneStrip;
import io.github.readfall.transcript.Transcriber;
import io.github.readfall.transcript.TranscriptFiles;
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
      case PHONE -> strips.isEmpty() ? List.of() : List.of(phone(strips));
      case TRANSCRIPT -> strips.stream().map(Exports::transcript).toList();
      case SVG -> List.of();
      case PNG -> List.of();
    };
  }

  private static Batch transcript(FinishedStrip strip) {
    return new TranscriptFiles(strip.stem(), Transcriber.of(strip.galley(), strip.original()));
  }

  private static Batch phone(List<FinishedStrip> strips) {
    List<PhoneStrip> shown =
        strips.stream()
            .map(
                strip ->
                    new PhoneStrip(
                        strip.galley(),
                        strip.findings(),
                        Transcriber.of(strip.galley(), strip.original())))
            .toList();
    return new PhoneFile(strips.get(0).name(), shown, strips.get(0).art());
  }
}
