package io.github.readfall.series;

import io.github.readfall.base.files.Folders;
import io.github.readfall.base.files.SafeFile;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.script.Header;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptFile;
import io.github.readfall.script.read.ScriptFileException;
import io.github.readfall.script.read.ScriptReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Starts the next episode of a series: {@code ep04} after {@code ep03}, with the same cast. */
public final class NewEpisode {

  private static final Pattern NAME = Pattern.compile("(?i)(ep)([0-9]{1,6})(?:[a-z]?)");
  private static final List<String> KEPT = List.of("Language", "Cast");

  /** A folder with a number in its name; the parts of one episode share it. */
  private record Numbered(Path folder, String word, int number, int digits) {}

  private NewEpisode() {}

  /**
   * Makes the folder and its script.
   *
   * @param series with series.toml
   * @return the script
   * @throws UnusablePath if that cannot be done; no existing file is replaced
   */
  public static Path in(Path series) throws UnusablePath {
    if (!EpisodeFiles.hasStyle(series)) {
      throw new UnusablePath(
          "There is no series.toml in " + series + ": start a series there, or open another.");
    }
    List<Numbered> before = numbered(series);
    Optional<Numbered> last = before.stream().max(Comparator.comparingInt(Numbered::number));
    int number = last.map(Numbered::number).orElse(0) + 1;
    int digits = last.map(Numbered::digits).orElse(2);
    String figures = String.valueOf(number);
    String padded = "0".repeat(Math.max(0, digits - figures.length())) + figures;
    Path folder = series.resolve(last.map(Numbered::word).orElse("ep") + padded);
    String text = text(series, number, last.map(l -> l.folder().resolve(EpisodeFiles.SCRIPT)));
    return write(folder, text);
  }

  private static List<Numbered> numbered(Path series) throws UnusablePath {
    List<Numbered> found = new ArrayList<>();
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(series)) {
      for (Path entry : entries) {
        Matcher name = NAME.matcher(String.valueOf(entry.getFileName()));
        if (name.matches()) {
          String figures = name.group(2);
          found.add(
              new Numbered(entry, name.group(1), Integer.parseInt(figures), figures.length()));
        }
      }
    } catch (IOException e) {
      throw new UnusablePath("The folder " + series + " cannot be read: check its permissions.");
    }
    found.sort(Comparator.comparing(n -> n.folder().toString()));
    return found;
  }

  private static Path write(Path folder, String text) throws UnusablePath {
    Folders.makeNew(folder);
    Path script = folder.resolve(EpisodeFiles.SCRIPT);
    SafeFile.write(script, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    return script;
  }

  private static String text(Path series, int number, Optional<Path> before) throws UnusablePath {
    Keywords keywords = Surroundings.style(Optional.of(series)).style().keywords();
    List<Header> headers =
        before.isPresent() && Files.exists(before.get())
            ? read(before.get(), keywords).headers()
            : List.of();
    StringBuilder text = new StringBuilder();
    text.append("Title: \nEpisode: ").append(number).append('\n');
    for (String key : KEPT) {
      values(headers, key)
          .forEach(value -> text.append(key).append(": ").append(value).append('\n'));
    }
    return text.append('\n').append(keywords.panel()).append(" 1\n\n").toString();
  }

  /** The values of the episode before, or what is to be filled in. */
  private static List<String> values(List<Header> headers, String key) {
    List<String> values =
        headers.stream()
            .filter(header -> header.key().equalsIgnoreCase(key))
            .map(Header::value)
            .toList();
    return values.isEmpty() ? List.of(key.equals("Language") ? "en" : "") : values;
  }

  private static Script read(Path script, Keywords keywords) throws UnusablePath {
    try {
      return new ScriptReader().read(ScriptFile.text(script), keywords).script();
    } catch (ScriptFileException e) {
      throw new UnusablePath(String.valueOf(e.getMessage()));
    }
  }
}
