package io.github.readfall.series.autosave;

import io.github.readfall.base.files.SafeFile;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.script.read.ScriptFile;
import io.github.readfall.script.read.ScriptFileException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The window's state on disk: {@code window.json} in the state folder.
 *
 * @param path of the file
 */
public record WindowStateFile(Path path) {

  /**
   * The result of reading.
   *
   * @param remembered the state, as at the first run if there is nothing to read
   * @param trouble a sentence if there was something that could not be read
   */
  public record Read(WindowState remembered, Optional<String> trouble) {}

  /** The file of a state folder, whether or not it is there yet. */
  public static WindowStateFile in(Path stateFolder) {
    return new WindowStateFile(stateFolder.resolve("window.json"));
  }

  /** Reads it. A file that cannot be used is kept beside under another name. */
  public Read read() {
    if (Files.notExists(path)) {
      return new Read(WindowState.FIRST, Optional.empty());
    }
    Optional<WindowState> read = text().flatMap(WindowStateJson::read);
    return read.map(remembered -> new Read(remembered, Optional.empty()))
        .orElseGet(() -> new Read(WindowState.FIRST, Optional.of(setAside())));
  }

  private Optional<String> text() {
    try {
      return Optional.of(ScriptFile.text(path));
    } catch (ScriptFileException e) {
      return Optional.empty();
    }
  }

  private String setAside() {
    try {
      Path kept = SiblingNames.of(path, "broken").keep(ScriptFile.bytes(path));
      return Wording.of("autosave.rememberedBroken", kept);
    } catch (ScriptFileException | UnusablePath e) {
      return Wording.of("autosave.rememberedUnreadable", path);
    }
  }

  /**
   * Writes it whole or not at all; its folder is made if it is missing.
   *
   * @throws UnusablePath if it cannot be written
   */
  public void write(WindowState remembered) throws UnusablePath {
    StateFolder.make(path.resolveSibling("."));
    String json = WindowStateJson.write(remembered);
    SafeFile.write(path, out -> out.write(json.getBytes(StandardCharsets.UTF_8)));
  }
}
