package io.github.readfall.series;

import io.github.readfall.base.files.SafeFile;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.script.read.ScriptFile;
import io.github.readfall.script.read.ScriptFileException;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.json.LayoutReader;
import io.github.readfall.strip.json.LayoutWriter;
import io.github.readfall.strip.json.ReadLayout;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The layout of an episode on disk, and the one before it.
 *
 * @param path of layout.json
 * @param previous of layout.previous.json, the way back
 */
public record LayoutFile(Path path, Path previous) {

  /** The layout of an episode, whether or not it is there yet. */
  public static LayoutFile of(EpisodeFiles files) {
    return new LayoutFile(files.layout(), files.previousLayout());
  }

  /**
   * The content of the file; empty if there is none.
   *
   * @throws UnusablePath if there is one that cannot be read as text
   */
  public Optional<ReadLayout> read() throws UnusablePath {
    Optional<String> text = text();
    return text.map(json -> new LayoutReader().read(json));
  }

  private Optional<String> text() throws UnusablePath {
    if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    if (Files.isDirectory(path)) {
      throw new UnusablePath(path + " is a folder: it should be the file with the layout.");
    }
    try {
      return Optional.of(ScriptFile.text(path));
    } catch (ScriptFileException e) {
      throw new UnusablePath(String.valueOf(e.getMessage()));
    }
  }

  /**
   * Saves a layout whole or not at all, and keeps the former one as the previous one.
   *
   * @throws UnusablePath if it cannot be written, or if the present file cannot be understood and
   *     so would be lost; either way it stays as it is
   */
  public void save(Layout layout) throws UnusablePath {
    Optional<String> present = text();
    String json = LayoutWriter.write(layout);
    if (present.filter(json::equals).isPresent()) {
      return;
    }
    if (present.isPresent()) {
      if (new LayoutReader().read(present.get()).layout().isEmpty()) {
        throw new UnusablePath(
            path + " cannot be understood, so it is not overwritten: fix it, or move it away.");
      }
      write(previous, present.get());
    }
    write(path, json);
  }

  private static void write(Path file, String text) throws UnusablePath {
    SafeFile.write(file, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
  }
}
