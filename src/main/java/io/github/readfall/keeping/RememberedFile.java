package io.github.readfall.keeping;

import io.github.readfall.script.ScriptFile;
import io.github.readfall.script.ScriptFileException;
import io.github.readfall.series.SafeFile;
import io.github.readfall.series.UnusablePath;
import io.github.readfall.wording.Wording;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What the window remembers, on disk: {@code window.json} in the state folder.
 *
 * @param path of the file
 */
public record RememberedFile(Path path) {

  /**
   * What was read.
   *
   * @param remembered as at the first run where there is nothing to read
   * @param trouble a sentence where there was something that could not be read
   */
  public record Read(Remembered remembered, Optional<String> trouble) {}

  /** The file of a state folder, whether or not it is there yet. */
  public static RememberedFile in(Path stateFolder) {
    return new RememberedFile(stateFolder.resolve("window.json"));
  }

  /** Reads it. A file that cannot be used is kept beside under another name. */
  public Read read() {
    if (Files.notExists(path)) {
      return new Read(Remembered.FIRST, Optional.empty());
    }
    Optional<Remembered> read = text().flatMap(RememberedJson::read);
    return read.map(remembered -> new Read(remembered, Optional.empty()))
        .orElseGet(() -> new Read(Remembered.FIRST, Optional.of(setAside())));
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
      Path kept = Beside.of(path, "broken").keep(ScriptFile.bytes(path));
      return Wording.of("keeping.rememberedBroken", kept);
    } catch (ScriptFileException | UnusablePath e) {
      return Wording.of("keeping.rememberedUnreadable", path);
    }
  }

  /**
   * Writes it whole or not at all; its folder is made where it is not there.
   *
   * @throws UnusablePath where it cannot be written
   */
  public void write(Remembered remembered) throws UnusablePath {
    StateFolder.make(path.resolveSibling("."));
    String json = RememberedJson.write(remembered);
    SafeFile.write(path, out -> out.write(json.getBytes(StandardCharsets.UTF_8)));
  }
}
