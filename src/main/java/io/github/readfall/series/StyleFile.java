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

  /** That of an episode's series; empty where the script lies alone. */
  public static Optional<StyleFile> of(EpisodeFiles files) {
    return files.seriesFolder().map(folder -> new StyleFile(folder.resolve(NAME)));
  }

  /**
   * What the file says, its byte order mark included.
   *
   * @throws UnusablePath where it cannot be read
   */
  public String text() throws UnusablePath {
    return EpisodeFiles.text(path);
  }

  /**
   * Writes another text, whole or not at all, if the file still says what it said.
   *
   * @param before what it said when it was read
   * @return whether it was written; if not, the file says something else now and is untouched
   * @throws UnusablePath where it cannot be written; what was there is untouched
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
      return false; // what cannot be read is not what was read
    }
  }
}
