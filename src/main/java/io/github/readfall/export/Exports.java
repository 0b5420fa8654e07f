package io.github.readfall.export;

import io.github.readfall.base.files.Batch;
import io.github.readfall.draw.render.SvgWriter;
import io.github.readfall.export.pdf.ProofBatch;
import io.github.readfall.export.pdf.ProofStrip;
import io.github.readfall.export.phone.PhoneFile;
import io.github.readfall.export.phone.PhoneStrip;
import io.github.readfall.export.raster.LayerFiles;
import io.github.readfall.export.raster.SliceFiles;
import io.github.readfall.export.raster.StripPicture;
import io.github.readfall.export.raster.WholePng;
import io.github.readfall.export.raster.WholeSvg;
import io.github.readfall.export.transcript.Transcriber;
import io.github.readfall.export.transcript.TranscriptFiles;
import java.util.List;
import java.util.function.Function;

/** Makes batches of files of finished strips. */
final class Exports {

  private Exports() {}

  /**
   * The files of one kind.
   *
   * @param strips one episode in one or more languages, each once
   */
  static List<Batch> of(Kind kind, List<FinishedStrip> strips, Order.Wish wish) {
    SvgWriter.Letters letters =
        wish.liveText() ? SvgWriter.Letters.LIVE : SvgWriter.Letters.OUTLINES;
    return switch (kind) {
      case LAYERS -> each(strips, strip -> new LayerFiles(strip, letters));
      case SLICES -> each(strips, strip -> SliceFiles.of(strip, wish.delivery()));
      case PROOF -> List.of(new ProofBatch(strips.stream().map(Exports::proof).toList()));
      case PHONE -> strips.isEmpty() ? List.of() : List.of(phone(strips));
      case TRANSCRIPT -> strips.stream().map(Exports::transcript).toList();
      case SVG -> each(strips, strip -> new WholeSvg(strip, letters));
      case PNG -> each(strips, WholePng::new);
    };
  }

  private static List<Batch> each(
      List<FinishedStrip> strips, Function<StripPicture, Batch> making) {
    return strips.stream()
        .map(strip -> new StripPicture(strip.stem(), strip.galley(), strip.art()))
        .map(making)
        .toList();
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

  private static ProofStrip proof(FinishedStrip strip) {
    return new ProofStrip(
        strip.stem() + "-proof.pdf", strip.galley(), strip.findings(), strip.art(), strip.shelf());
  }
}
