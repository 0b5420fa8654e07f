package io.github.readfall.series;

import io.github.readfall.base.files.Folders;
import io.github.readfall.base.files.SafeFile;
import io.github.readfall.base.files.UnusablePath;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Writes the parts of an episode beside it: {@code ep03a}, {@code ep03b}, and the old one stays.
 */
public final class NewParts {

  private static final String SUFFIX = ".txt";

  /**
   * The place of a part.
   *
   * @param letter of its name
   * @param script its script, which does not exist yet
   * @param folder to be made for it; empty if its script goes beside the old one
   */
  public record Place(String letter, Path script, Optional<Path> folder) {

    private Path first() {
      return folder.orElse(script);
    }
  }

  private NewParts() {}

  /**
   * The first free places in a row.
   *
   * @param count of the parts; 1 to 26
   * @throws UnusablePath if there are too few left
   */
  public static List<Place> places(EpisodeFiles episode, int count) throws UnusablePath {
    List<Place> free = new ArrayList<>();
    for (char letter = 'a'; letter <= 'z' && free.size() < count; letter++) {
      Place place = place(episode, String.valueOf(letter));
      if (Files.exists(place.first())) {
        free.clear();
      } else {
        free.add(place);
      }
    }
    if (free.size() < count) {
      throw new UnusablePath(
          "There are too many parts beside "
              + episode.script()
              + " already: move those away that are no longer wanted.");
    }
    return free;
  }

  /** A folder beside the episode's; for a bare script, or one beside its series.toml, a file. */
  private static Place place(EpisodeFiles episode, String letter) {
    Path script = episode.script();
    String name = String.valueOf(script.getFileName());
    Optional<Path> folder = name.equals(EpisodeFiles.SCRIPT) ? folder(script) : Optional.empty();
    if (folder.isPresent()) {
      Path part = folder.get().resolveSibling(folder.get().getFileName() + letter);
      return new Place(letter, part.resolve(EpisodeFiles.SCRIPT), Optional.of(part));
    }
    String stem = name.endsWith(SUFFIX) ? name.substring(0, name.length() - 4) : name;
    return new Place(letter, script.resolveSibling(stem + "-" + letter + SUFFIX), Optional.empty());
  }

  /** The episode's own folder, as the person named it if that is a name. */
  private static Optional<Path> folder(Path script) {
    Path whole = script.toAbsolutePath().normalize();
    return Optional.ofNullable(script.getParent())
        .filter(named -> whole.startsWith(named.toAbsolutePath()))
        .or(() -> Optional.ofNullable(whole.getParent()))
        .filter(folder -> folder.getFileName() != null)
        .filter(folder -> !Files.exists(folder.resolve(EpisodeFiles.STYLE)));
  }

  /**
   * Writes every part, or none.
   *
   * @throws UnusablePath if something is in the way by now, or cannot be written
   */
  public static void write(List<Place> places, List<String> texts) throws UnusablePath {
    List<Path> made = new ArrayList<>();
    boolean done = false;
    try {
      for (int i = 0; i < places.size(); i++) {
        write(places.get(i), texts.get(i), made);
      }
      done = true;
    } finally {
      if (!done) {
        Collections.reverse(made);
        remove(made);
      }
    }
  }

  private static void write(Place place, String text, List<Path> made) throws UnusablePath {
    if (Files.exists(place.first())) {
      throw new UnusablePath(place.first() + " is there already: nothing was written.");
    }
    if (place.folder().isPresent()) {
      Folders.makeNew(place.folder().get());
      made.add(place.folder().get());
    }
    made.add(place.script());
    SafeFile.write(place.script(), out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
  }

  private static void remove(List<Path> made) throws UnusablePath {
    for (Path path : made) {
      try {
        Files.deleteIfExists(path);
      } catch (IOException e) {
        throw new UnusablePath(path + " was begun and could not be removed: delete it.");
      }
    }
  }
}
