package io.github.readfall.series;

import io.github.readfall.base.files.SafeFile;
import io.github.readfall.base.files.UnusablePath;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/**
 * The house style of a series on disk.
 *
 * @param path of series.toml
 */
public record StyleFile(Path path) {

  /** The file's name, as findings call it. */
  public static final String NAME = EpisodeFiles.STYLE;

  /** The style file of an episode's series; empty if the script has no series. */
  public static Optional<StyleFile> of(EpisodeFiles files) {
    return files.seriesFolder().map(folder -> new StyleFile(folder.resolve(NAME)));
  }

  /**
   * The text of the file, with its byte order mark.
   *
   * @throws UnusablePath if it cannot be read
   */
  public String text() throws UnusablePath {
    return EpisodeFiles.text(path);
  }

  /**
   * Writes another text, whole or not at all, if the file has not changed since it was read.
   *
   * @param before its text when it was read
   * @return true if it was written; if not, the file has changed and is untouched
   * @throws UnusablePath if it cannot be written; the present file is untouched
   */
  public boolean replace(String before, String after) throws UnusablePath {
    byte[] old = before.getBytes(StandardCharsets.UTF_8);
    byte[] bytes = after.getBytes(StandardCharsets.UTF_8);
    return SafeFile.writeIf(path, out -> out.write(bytes), () -> says(old));
  }

  private boolean says(byte[] old) {
    try {
      return Arrays.equals(TranslationFile.bytes(path), old);
    } catch (UnusablePath e) {
      return false; // unreadable, so not what was read
    }
  }
}
