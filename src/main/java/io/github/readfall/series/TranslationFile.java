package io.github.readfall.series;

import io.github.readfall.base.files.Folders;
import io.github.readfall.base.files.SafeFile;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.languages.translate.Budget;
import io.github.readfall.languages.translate.Translation;
import io.github.readfall.languages.xliff.LanguageFindings;
import io.github.readfall.languages.xliff.Matched;
import io.github.readfall.languages.xliff.Xliff;
import io.github.readfall.languages.xliff.XliffReader;
import io.github.readfall.languages.xliff.XliffWriter;
import io.github.readfall.languages.xml.XmlFault;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptFile;
import io.github.readfall.script.read.ScriptFileException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;

/**
 * A translation of an episode on disk, and its previous version.
 *
 * @param language a BCP 47 tag
 * @param path of lang/TAG.xlf
 * @param previous of lang/TAG.previous.xlf, the way back
 */
public record TranslationFile(String language, Path path, Path previous) {

  /** The translation of an episode, whether or not it is there yet. */
  public static TranslationFile of(EpisodeFiles files, String language) {
    Path folder = files.languagesFolder();
    return new TranslationFile(
        language,
        folder.resolve(language + EpisodeFiles.TRANSLATION),
        folder.resolve(language + EpisodeFiles.PREVIOUS_TRANSLATION));
  }

  /** Its name for messages: its path from the script's folder. */
  public String name() {
    return EpisodeFiles.LANGUAGES + "/" + path.getFileName();
  }

  /**
   * The file matched to the script; empty if there is none.
   *
   * @throws UnusablePath if there is one that cannot be used
   */
  public Optional<Matched> matched(Script script) throws UnusablePath {
    if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    try {
      return Optional.of(Matched.of(XliffReader.read(bytes(path)), script));
    } catch (XmlFault e) {
      throw new UnusablePath(e.in(path.toString()));
    }
  }

  /**
   * The episode in the language; empty if there is no file.
   *
   * @param budgets of the balloons, by the cue's id, as far as they are known
   * @throws UnusablePath if there is one that cannot be used
   */
  public Optional<ReadTranslation> read(Script script, Map<String, Budget> budgets)
      throws UnusablePath {
    return matched(script)
        .map(
            found ->
                new ReadTranslation(
                    found.translation(language), LanguageFindings.of(found, name(), budgets)));
  }

  /**
   * The file matched to the script, or a new one.
   *
   * @throws UnusablePath if there is a file that cannot be used
   */
  public Matched orNew(Script script) throws UnusablePath {
    Optional<Matched> there = matched(script);
    if (there.isPresent()) {
      return there.get();
    }
    Translation empty = Translation.empty(language, script);
    return Matched.of(XliffWriter.write(script, empty, Map.of()), script);
  }

  /**
   * Saves a file whole or not at all, and keeps the former one as the previous one.
   *
   * @return true if anything was written: a file with the same content is left alone
   * @throws UnusablePath if it cannot be written, or if the present file cannot be read and so
   *     would be lost; either way it stays as it is
   */
  public boolean save(Xliff xliff) throws UnusablePath {
    byte[] bytes = xliff.document().bytes();
    if (Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
      byte[] present = bytes(path);
      if (Arrays.equals(present, bytes)) {
        return false;
      }
      SafeFile.write(previous, out -> out.write(present));
    }
    Path folder = path.toAbsolutePath().getParent();
    if (folder != null) {
      Folders.make(folder);
    }
    SafeFile.write(path, out -> out.write(bytes));
    return true;
  }

  /**
   * The bytes of a file.
   *
   * @throws UnusablePath if it cannot be read
   */
  public static byte[] bytes(Path file) throws UnusablePath {
    try {
      return ScriptFile.bytes(file);
    } catch (ScriptFileException e) {
      throw new UnusablePath(String.valueOf(e.getMessage()));
    }
  }
}
