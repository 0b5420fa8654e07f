package io.github.readfall.series;

import io.github.readfall.finding.Finding;
import io.github.readfall.font.FontShelf;
import io.github.readfall.script.ReadScript;
import io.github.readfall.script.Script;
import io.github.readfall.script.ScriptFile;
import io.github.readfall.script.ScriptFileException;
import io.github.readfall.script.ScriptReader;
import io.github.readfall.style.HouseStyle;
import io.github.readfall.style.ReadStyle;
import io.github.readfall.style.StyleReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An episode read from disk.
 *
 * @param path of its script, as the person named it
 * @param script what it says
 * @param style how it is lettered
 * @param shelf the faces it may be lettered in
 * @param findings what was wrong with its files, the script's first
 */
public record Episode(
    Path path, Script script, HouseStyle style, FontShelf shelf, List<Finding> findings) {

  public Episode {
    findings = List.copyOf(findings);
  }

  /**
   * Reads an episode.
   *
   * @param bundled the faces that come with the program
   * @throws UnusablePath where its script or its series.toml cannot be read at all
   */
  public static Episode read(EpisodeFiles files, FontShelf bundled) throws UnusablePath {
    ReadStyle style = style(files.seriesFolder());
    ReadScript read = new ScriptReader().read(text(files.script()), style.style().keywords());
    List<Finding> findings = new ArrayList<>(read.findings());
    findings.addAll(style.findings());
    FontShelf shelf = bundled;
    if (files.seriesFolder().isPresent()) {
      FontShelf.Stocked stocked = bundled.with(files.seriesFolder().get().resolve("fonts"));
      findings.addAll(stocked.findings());
      shelf = stocked.shelf();
    }
    return new Episode(files.script(), read.script(), style.style(), shelf, findings);
  }

  static ReadStyle style(Optional<Path> seriesFolder) throws UnusablePath {
    if (seriesFolder.isEmpty()) {
      return new ReadStyle(HouseStyle.DEFAULT, List.of());
    }
    Path file = seriesFolder.get().resolve(EpisodeFiles.STYLE);
    if (Files.isDirectory(file)) {
      throw new UnusablePath(file + " is a folder: it should be the file with the house style.");
    }
    String toml = text(file);
    return new StyleReader().read(toml, EpisodeFiles.STYLE);
  }

  private static String text(Path file) throws UnusablePath {
    try {
      return ScriptFile.text(file);
    } catch (ScriptFileException e) {
      throw new UnusablePath(String.valueOf(e.getMessage()));
    }
  }
}
