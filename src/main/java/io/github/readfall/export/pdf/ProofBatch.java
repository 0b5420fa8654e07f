package io.github.readfall.export.pdf;

import io.github.readfall.base.files.Batch;
import io.github.readfall.base.files.Cancelled;
import io.github.readfall.base.files.CannotWrite;
import io.github.readfall.base.files.OutputTray;
import io.github.readfall.base.files.Progress;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

/**
 * The proofs of an episode, one for each language. Its art is read once for all of them.
 *
 * @param strips of one episode
 */
public record ProofBatch(List<ProofStrip> strips) implements Batch {

  private static final int HUNDRED = 100;

  public ProofBatch {
    strips = List.copyOf(strips);
  }

  @Override
  public List<String> names() {
    return strips.stream().map(ProofStrip::file).toList();
  }

  @Override
  public void writeTo(OutputTray tray, Progress work) throws IOException, CannotWrite, Cancelled {
    ProofStrip first = strips.get(0);
    if (first.art().pages().isEmpty()) {
      write(Optional.empty(), tray, work);
      return;
    }
    double width = Paper.of(first.galley()).stripPt();
    try (ProofArt art = ProofArt.read(first.art(), width, part(work, 0))) {
      write(Optional.of(art), tray, work);
    }
  }

  private void write(Optional<ProofArt> art, OutputTray tray, Progress work)
      throws IOException, CannotWrite, Cancelled {
    for (int i = 0; i < strips.size(); i++) {
      try (OutputStream out = tray.open(strips.get(i).file())) {
        Proof.write(strips.get(i), art, out, part(work, i + 1));
      } catch (UncheckedIOException e) {
        throw new CannotWrite(
            "The letters of a face could not be put into "
                + strips.get(i).file()
                + ": its file is damaged or gone.");
      }
    }
  }

  /** One part of the work: the art, then each language. */
  private Progress part(Progress work, int index) {
    long of = (long) HUNDRED * (strips.size() + 1);
    return (done, all) -> work.at((long) HUNDRED * index + HUNDRED * done / all, of);
  }
}
