package io.github.readfall.series;

import io.github.readfall.base.files.Folders;
import io.github.readfall.base.files.UnusablePath;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A person's own copy of the series that comes with the program, to try things on. */
public final class SampleSeries {

  private SampleSeries() {}

  /**
   * The copy, made if it does not exist yet. An existing one is left as the person has it.
   *
   * @param sample to be copied
   * @param copy its folder, new or from an earlier call
   * @return the copy
   * @throws UnusablePath if it cannot be made; then nothing is there
   */
  public static Path copied(Path sample, Path copy) throws UnusablePath {
    if (Files.exists(copy)) {
      return copy;
    }
    try {
      Folders.copy(sample, copy);
      return copy;
    } catch (IOException e) {
      throw new UnusablePath(
          "The sample could not be copied to " + copy + ": check that there is room and you may.");
    }
  }
}
