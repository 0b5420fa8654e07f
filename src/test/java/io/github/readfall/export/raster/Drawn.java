package io.github.readfall.export.raster;

import io.github.readfall.art.StripArt;
import io.github.readfall.base.files.Batch;
import io.github.readfall.base.files.Progress;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.job.Proofer;
import io.github.readfall.lettering.typeset.Sample;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.strip.galley.Galley;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.imageio.ImageIO;

/** Strips to be drawn in tests, and files that were made of them, kept in memory. */
final class Drawn {

  /** Every manner of speech, a joined balloon, thoughts, effects. */
  static final Path EVERY_MANNER = Path.of("src/test/resources/strips/good/every-manner");

  static final Path SAMPLE = Path.of("sample-scripts/overdue-tide/ep01");

  private Drawn() {}

  static Galley galley(Path episode) {
    try {
      EpisodeFiles files = EpisodeFiles.at(episode).get(0);
      return new Proofer(Sample.shelf(), () -> 0).check(files).galley();
    } catch (UnusablePath e) {
      throw new AssertionError(e);
    }
  }

  static StripPicture strip(Galley galley) {
    return new StripPicture("ep01-en", galley, StripArt.none((int) Math.round(galley.widthPx())));
  }

  /** The files of a batch, in the order in which they were opened. */
  static Map<String, byte[]> files(Batch batch) throws Exception {
    Map<String, ByteArrayOutputStream> open = new LinkedHashMap<>();
    batch.writeTo(
        name -> {
          ByteArrayOutputStream out = new ByteArrayOutputStream();
          if (open.put(name, out) != null) {
            throw new AssertionError("opened twice: " + name);
          }
          return out;
        },
        Progress.UNWATCHED);
    Map<String, byte[]> files = new LinkedHashMap<>();
    open.forEach((name, out) -> files.put(name, out.toByteArray()));
    return files;
  }

  /** One of the files of a batch. */
  static byte[] file(Map<String, byte[]> files, String name) {
    byte[] file = files.get(name);
    if (file == null) {
      throw new AssertionError(name + " is none of " + files.keySet());
    }
    return file;
  }

  /** By the JDK's decoder, which is not ours. */
  static BufferedImage read(byte[] file) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(file));
  }
}
