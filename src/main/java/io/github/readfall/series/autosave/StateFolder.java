package io.github.readfall.series.autosave;

import io.github.readfall.base.files.Folders;
import io.github.readfall.base.files.UnusablePath;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The folder for the program's own state: never a person's only copy of anything but autosaved text
 * that survives a crash.
 *
 * <ul>
 *   <li>Linux and the like: {@code $XDG_STATE_HOME/readfall}, or if that is not set {@code
 *       ~/.local/state/readfall} (XDG Base Directory Specification, version 0.8; a path that is not
 *       absolute is ignored, as it asks).
 *   <li>macOS: {@code ~/Library/Application Support/Readfall} (Apple, File System Programming
 *       Guide).
 *   <li>Windows: {@code %LOCALAPPDATA%\Readfall} (Microsoft, FOLDERID_LocalAppData).
 * </ul>
 *
 * The system property {@code readfall.state} takes precedence.
 */
public final class StateFolder {

  private static final String OVERRIDE = "readfall.state";

  private StateFolder() {}

  /**
   * The state folder, whether or not it is there yet.
   *
   * @param environment as of {@code System.getenv()}
   * @param properties as of {@code System.getProperties()}
   */
  public static Path of(Map<String, String> environment, Map<?, ?> properties) {
    Optional<Path> given = word(properties, OVERRIDE).flatMap(StateFolder::path);
    if (given.isPresent()) {
      return given.get().toAbsolutePath();
    }
    String system = word(properties, "os.name").orElse("").toLowerCase(Locale.ROOT);
    Path home = word(properties, "user.home").flatMap(StateFolder::path).orElse(Path.of(""));
    if (system.startsWith("mac")) {
      return home.resolve("Library").resolve("Application Support").resolve("Readfall");
    }
    if (system.startsWith("windows")) {
      return absolute(environment, "LOCALAPPDATA")
          .orElse(home.resolve("AppData").resolve("Local"))
          .resolve("Readfall");
    }
    return absolute(environment, "XDG_STATE_HOME")
        .orElse(home.resolve(".local").resolve("state"))
        .resolve("readfall");
  }

  private static Optional<String> word(Map<?, ?> words, String key) {
    return Optional.ofNullable(words.get(key)).map(String::valueOf).filter(w -> !w.isBlank());
  }

  private static Optional<Path> absolute(Map<String, String> environment, String key) {
    return word(environment, key).flatMap(StateFolder::path).filter(Path::isAbsolute);
  }

  private static Optional<Path> path(String word) {
    try {
      return Optional.of(Path.of(word));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  /**
   * Makes the folder, or one in it.
   *
   * @throws UnusablePath if that cannot be done
   */
  static void make(Path folder) throws UnusablePath {
    Folders.make(folder);
  }
}
