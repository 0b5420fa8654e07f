package io.github.readfall.series;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.script.lines.LanguageTag;
import io.github.readfall.script.read.ScriptFile;
import io.github.readfall.script.read.ScriptFileException;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The files of one episode.
 *
 * @param script the script; it exists
 * @param seriesFolder the folder with series.toml, if the script belongs to a series
 */
public record EpisodeFiles(Path script, Optional<Path> seriesFolder) {

  static final String SCRIPT = "script.txt";
  static final String STYLE = "series.toml";
  static final String LAYOUT = "layout.json";
  static final String IGNORED = "ignored.toml";
  static final String FORMER_IGNORED = "set-aside.toml";
  static final String LANGUAGES = "lang";
  static final String TRANSLATION = ".xlf";
  static final String PREVIOUS_TRANSLATION = ".previous.xlf";
  static final String PREVIOUS_LAYOUT = "layout.previous.json";

  /**
   * The episodes at a path: one for a script or an episode folder, all for a series folder.
   *
   * @throws UnusablePath if there is nothing to read
   */
  public static List<EpisodeFiles> at(Path path) throws UnusablePath {
    if (Files.isRegularFile(path)) {
      return List.of(of(path));
    }
    if (!Files.isDirectory(path)) {
      throw new UnusablePath(
          "There is nothing at " + path + ": give a script, an episode folder or a series folder.");
    }
    if (Files.exists(path.resolve(SCRIPT))) {
      return List.of(of(path.resolve(SCRIPT)));
    }
    List<EpisodeFiles> episodes = episodesIn(path);
    if (episodes.isEmpty()) {
      throw new UnusablePath(
          "There is no script.txt in " + path + " or in a folder in it: give a script's own path.");
    }
    return episodes;
  }

  /** The path of the layout, if there is one: beside the script. */
  public Path layout() {
    return script.resolveSibling(LAYOUT);
  }

  /** The path of the layout before the last one saved. */
  public Path previousLayout() {
    return script.resolveSibling(PREVIOUS_LAYOUT);
  }

  /** The file of ignored findings; it need not exist. */
  public Path ignored() {
    return script.resolveSibling(IGNORED);
  }

  /** The file of ignored findings under its former name, set-aside.toml; it need not exist. */
  public Path formerIgnored() {
    return script.resolveSibling(FORMER_IGNORED);
  }

  /** The folder with the translations. */
  public Path languagesFolder() {
    return script.resolveSibling(LANGUAGES);
  }

  /**
   * The tags of the languages with translations, in their order.
   *
   * @throws UnusablePath if the folder cannot be read
   */
  public List<String> languages() throws UnusablePath {
    Path folder = languagesFolder();
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> String.valueOf(file.getFileName()))
          .filter(name -> name.endsWith(TRANSLATION) && !name.endsWith(PREVIOUS_TRANSLATION))
          .map(name -> name.substring(0, name.length() - TRANSLATION.length()))
          .filter(tag -> LanguageTag.tag(tag).filter(tag::equals).isPresent())
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UnusablePath("The folder " + folder + " cannot be read: check its permissions.");
    }
  }

  /** Returns true if a path names a whole series. */
  public static boolean isSeries(Path path) {
    return Files.isDirectory(path) && !Files.exists(path.resolve(SCRIPT));
  }

  /** The other episodes of its series; none if it belongs to none. */
  public List<EpisodeFiles> siblings() {
    try {
      List<EpisodeFiles> all =
          seriesFolder.isPresent() ? episodesIn(seriesFolder.get()) : List.of();
      return all.stream().filter(other -> !isSame(other)).toList();
    } catch (UnusablePath e) {
      return List.of(); // a folder that cannot be listed is not compared with
    }
  }

  /** All episodes of its series, itself among them, in their order. */
  public List<EpisodeFiles> withSiblings() {
    List<EpisodeFiles> all = new ArrayList<>(siblings());
    all.add(this);
    all.sort(Comparator.comparing(episode -> episode.script().toAbsolutePath().toString()));
    return all;
  }

  private boolean isSame(EpisodeFiles other) {
    Path one = script.toAbsolutePath().normalize();
    return one.equals(other.script.toAbsolutePath().normalize());
  }

  private static EpisodeFiles of(Path script) {
    Path folder = script.toAbsolutePath().normalize().getParent();
    Optional<Path> series = Optional.ofNullable(folder).filter(EpisodeFiles::hasStyle);
    Optional<Path> above =
        Optional.ofNullable(folder).map(Path::getParent).filter(EpisodeFiles::hasStyle);
    return new EpisodeFiles(script, series.or(() -> above));
  }

  static boolean hasStyle(Path folder) {
    return Files.exists(folder.resolve(STYLE));
  }

  private static List<EpisodeFiles> episodesIn(Path series) throws UnusablePath {
    List<EpisodeFiles> episodes = new ArrayList<>();
    try (DirectoryStream<Path> folders = Files.newDirectoryStream(series, Files::isDirectory)) {
      for (Path folder : folders) {
        if (Files.exists(folder.resolve(SCRIPT))) {
          episodes.add(of(folder.resolve(SCRIPT)));
        }
      }
    } catch (IOException e) {
      throw new UnusablePath("The folder " + series + " cannot be read: check its permissions.");
    }
    episodes.sort(Comparator.comparing(episode -> episode.script().toString()));
    return episodes;
  }

  static String text(Path file) throws UnusablePath {
    try {
      return ScriptFile.text(file);
    } catch (ScriptFileException e) {
      throw new UnusablePath(String.valueOf(e.getMessage()));
    }
  }
}
