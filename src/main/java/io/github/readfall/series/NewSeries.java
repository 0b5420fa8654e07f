package io.github.readfall.series;

import io.github.readfall.base.files.Folders;
import io.github.readfall.base.files.SafeFile;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.lettering.style.SeriesTemplate;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Starts a series: a commented series.toml, a folder for faces, and a first script. */
public final class NewSeries {

  private NewSeries() {}

  /**
   * Makes the files of a new series.
   *
   * @param folder new, or without the files to be written
   * @return the files written
   * @throws UnusablePath if one of them exists already, or cannot be written
   */
  public static List<Path> in(Path folder) throws UnusablePath {
    Path style = folder.resolve(EpisodeFiles.STYLE);
    Path script = folder.resolve("ep01").resolve(EpisodeFiles.SCRIPT);
    for (Path file : List.of(style, script)) {
      if (Files.exists(file)) {
        throw new UnusablePath(file + " is there already: name a new folder for the series.");
      }
    }
    Folders.make(folder.resolve("ep01"));
    Folders.make(folder.resolve("fonts"));
    write(style, SeriesTemplate.seriesToml());
    write(script, SeriesTemplate.script());
    return List.of(style, script);
  }

  private static void write(Path file, String text) throws UnusablePath {
    SafeFile.write(file, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
  }
}
