package io.github.readfall.cli;

import io.github.readfall.base.files.SafeFile;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.draw.Drawing;
import io.github.readfall.draw.render.PictureFormat;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Option;

/** A picture of what a command did. */
final class PictureOption {

  @Option(
      names = "--picture",
      paramLabel = "FILE",
      description = "Draw the result to a .png or .svg file (one episode only).")
  private Optional<Path> file = Optional.empty();

  /** Refuses a picture that cannot be drawn, before any work is done. */
  void check(int episodes) throws CannotProceed {
    if (file.isEmpty()) {
      return;
    }
    if (episodes > 1) {
      throw new CannotProceed("--picture draws one episode: give the path of an episode.");
    }
    if (PictureFormat.of(file.get()).isEmpty()) {
      throw new CannotProceed(
          "--picture writes PNG or SVG: end the file's name with .png or .svg.");
    }
  }

  /** Draws, if asked to. */
  void draw(Supplier<Drawing> drawing, int dpi) throws UnusablePath {
    if (file.isPresent()) {
      PictureFormat format = PictureFormat.of(file.get()).orElseThrow();
      SafeFile.write(file.get(), out -> format.write(drawing.get(), dpi, out));
    }
  }
}
