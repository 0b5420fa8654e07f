package io.github.readfall.series;

import io.github.readfall.base.files.SafeFile;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import io.github.readfall.script.Script;
import io.github.readfall.series.ignored.IgnoredFindings;
import io.github.readfall.series.ignored.IgnoredReader;
import io.github.readfall.series.ignored.IgnoredText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The file of an episode's ignored findings. A file under the former name is used as long as there
 * is none under the present one; the first change writes all of it under the present name and
 * deletes the former file.
 *
 * @param path of ignored.toml
 * @param former of set-aside.toml
 */
public record IgnoredFile(Path path, Path former) {

  /** Rule id of a former file that is no longer read. */
  static final String UNUSED_FILE = "ignored/unused-file";

  /** The file of an episode; it need not exist. */
  public static IgnoredFile of(EpisodeFiles files) {
    return new IgnoredFile(files.ignored(), files.formerIgnored());
  }

  /**
   * Reads the ignored findings; none if there is no file. If both files exist, the former is not
   * read, and a finding says so.
   *
   * @throws UnusablePath if the file exists but cannot be read as text
   */
  public IgnoredFindings read() throws UnusablePath {
    IgnoredFindings read = parsed(text());
    if (!Files.exists(path) || !Files.exists(former)) {
      return read;
    }
    List<Finding> findings = new ArrayList<>(read.findings());
    findings.add(
        Finding.of(
            UNUSED_FILE,
            Severity.WARNING,
            Where.at(EpisodeFiles.FORMER_IGNORED, 1, 1),
            "This file is not read, because ignored.toml is beside it.",
            "Move what you still need into ignored.toml, then delete this file."));
    return new IgnoredFindings(read.fileName(), read.entries(), findings);
  }

  private IgnoredFindings parsed(String text) {
    return IgnoredReader.read(text, String.valueOf(current().getFileName()));
  }

  private Path current() {
    return Files.exists(path) || !Files.exists(former) ? path : former;
  }

  private String text() throws UnusablePath {
    Path file = current();
    if (Files.isDirectory(file)) {
      throw new UnusablePath(file + " is a folder: it should be the file of ignored findings.");
    }
    return Files.exists(file) ? EpisodeFiles.text(file) : "";
  }

  /**
   * Ignores one more finding.
   *
   * @param script that the finding is about
   * @param reason why it may stay; not blank
   * @throws UnusablePath if the file cannot be written; it is unchanged then
   */
  public void add(Finding finding, Script script, String reason) throws UnusablePath {
    write(IgnoredText.with(text(), finding, script, reason));
  }

  /**
   * Stops ignoring a finding.
   *
   * @param script that the finding is about
   * @throws UnusablePath if its entry is not found or the file cannot be written; it is unchanged
   *     then
   */
  public void remove(Finding finding, Script script) throws UnusablePath {
    String before = text();
    Optional<String> after =
        parsed(before)
            .entryOf(finding, script)
            .flatMap(entry -> IgnoredText.without(before, entry));
    if (after.isEmpty()) {
      throw new UnusablePath(
          "The entry for this finding was not found in " + current() + ": delete it by hand.");
    }
    write(after.get());
  }

  /** Writes all entries under the present name first, so that a crash between loses none. */
  private void write(String text) throws UnusablePath {
    boolean replacesFormer = current().equals(former);
    SafeFile.write(path, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    if (replacesFormer) {
      deleteFormer();
    }
  }

  private void deleteFormer() {
    try {
      Files.deleteIfExists(former);
    } catch (IOException e) {
      return; // every entry is in the new file, and read() reports the one that is left
    }
  }
}
