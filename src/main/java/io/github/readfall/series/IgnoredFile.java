package io.github.readfall.series;

import io.github.readfall.base.files.SafeFile;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.script.Script;
import io.github.readfall.series.ignored.IgnoredFindings;
import io.github.readfall.series.ignored.IgnoredReader;
import io.github.readfall.series.ignored.IgnoredText;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What an episode's findings say that are set aside, on disk.
 *
 * @param path of set-aside.toml
 */
public record IgnoredFile(Path path) {

  /** That of an episode, whether or not it is there yet. */
  public static IgnoredFile of(EpisodeFiles files) {
    return new IgnoredFile(files.aside());
  }

  /**
   * What the file says; nothing where there is none.
   *
   * @throws UnusablePath where there is one that cannot be read as text
   */
  public IgnoredFindings read() throws UnusablePath {
    return IgnoredReader.read(text(), EpisodeFiles.ASIDE);
  }

  private String text() throws UnusablePath {
    if (Files.isDirectory(path)) {
      throw new UnusablePath(path + " is a folder: it should be the file with what is set aside.");
    }
    return Files.exists(path) ? EpisodeFiles.text(path) : "";
  }

  /**
   * Sets one more finding aside.
   *
   * @param script that it is about
   * @param reason not blank
   * @throws UnusablePath where the file cannot be written; it stays as it is then
   */
  public void add(Finding finding, Script script, String reason) throws UnusablePath {
    write(IgnoredText.with(text(), finding, script, reason));
  }

  /**
   * Takes a finding up again that is set aside.
   *
   * @param script that it is about
   * @throws UnusablePath where its entry is not found, or the file cannot be written; it stays as
   *     it is then
   */
  public void takeUp(Finding finding, Script script) throws UnusablePath {
    String before = text();
    Optional<String> after =
        IgnoredReader.read(before, EpisodeFiles.ASIDE)
            .entryOf(finding, script)
            .flatMap(entry -> IgnoredText.without(before, entry));
    if (after.isEmpty()) {
      throw new UnusablePath(
          "The entry for this finding was not found in " + path + ": take it out there by hand.");
    }
    write(after.get());
  }

  private void write(String text) throws UnusablePath {
    SafeFile.write(path, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
  }
}
