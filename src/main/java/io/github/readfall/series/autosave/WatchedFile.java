package io.github.readfall.series.autosave;

import io.github.readfall.series.EpisodeFiles;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A part of an open episode that others may change on disk.
 *
 * @param kind of the part
 * @param path it need not exist
 */
public record WatchedFile(Kind kind, Path path) {

  /** The watched parts of an episode. */
  public enum Kind {
    SCRIPT,
    STYLE,
    LAYOUT,
    IGNORED,
    FONTS,
    ART;

    /**
     * Returns true for a folder, whose files are large, so that size and time stand for their
     * content.
     */
    private boolean isFolder() {
      return this == FONTS || this == ART;
    }
  }

  private static final ContentHash ABSENT = new ContentHash("");

  /** The watched parts of an episode. */
  public static List<WatchedFile> of(EpisodeFiles episode) {
    List<WatchedFile> all = new ArrayList<>();
    all.add(new WatchedFile(Kind.SCRIPT, episode.script()));
    all.add(new WatchedFile(Kind.LAYOUT, episode.layout()));
    all.add(new WatchedFile(Kind.IGNORED, episode.ignored()));
    all.add(new WatchedFile(Kind.IGNORED, episode.formerIgnored()));
    all.add(new WatchedFile(Kind.ART, episode.script().resolveSibling("art")));
    episode
        .seriesFolder()
        .ifPresent(
            folder -> {
              all.add(new WatchedFile(Kind.STYLE, folder.resolve("series.toml")));
              all.add(new WatchedFile(Kind.FONTS, folder.resolve("fonts")));
            });
    return List.copyOf(all);
  }

  /** The hash of its present content; empty if that cannot be seen just now. */
  Optional<ContentHash> look() {
    try {
      return Optional.of(ContentHash.of(kind.isFolder() ? list() : Files.readAllBytes(path)));
    } catch (NoSuchFileException | NotDirectoryException e) {
      return Optional.of(ABSENT);
    } catch (IOException | UncheckedIOException e) {
      return Optional.empty();
    }
  }

  private byte[] list() throws IOException {
    ByteArrayOutputStream list = new ByteArrayOutputStream();
    try (Stream<Path> files = Files.walk(path.toRealPath(), 2)) {
      for (Path file : files.sorted().toList()) {
        BasicFileAttributes is = Files.readAttributes(file, BasicFileAttributes.class);
        if (is.isRegularFile()) {
          String line = file + "\n" + is.size() + "\n" + is.lastModifiedTime().toMillis() + "\n";
          list.writeBytes(line.getBytes(StandardCharsets.UTF_8));
        }
      }
    }
    return list.toByteArray();
  }
}
