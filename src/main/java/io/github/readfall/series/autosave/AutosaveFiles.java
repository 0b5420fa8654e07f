package io.github.readfall.series.autosave;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.script.read.ScriptFile;
import io.github.readfall.script.read.ScriptFileException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The side files of a script: beside it as {@code script.unsaved.txt}, and in the state folder if
 * its own folder cannot be written. An existing one is never replaced by a new window.
 */
final class AutosaveFiles {

  private static final String WHAT = "unsaved";

  private final Path script;
  private final SideFileLocks claims;
  private final List<SiblingNames> folders;

  /**
   * Those of a script.
   *
   * @param script whichever way it is named
   */
  AutosaveFiles(Path script, SideFileLocks claims) {
    this.script = real(script);
    this.claims = claims;
    this.folders = List.of(SiblingNames.of(this.script, WHAT), inState(this.script, claims));
  }

  /** The real path, the same for all links to it. */
  private static Path real(Path script) {
    try {
      return script.toRealPath();
    } catch (IOException e) {
      return script.toAbsolutePath().normalize();
    }
  }

  private static SiblingNames inState(Path script, SideFileLocks claims) {
    ContentHash path = ContentHash.of(script.toString().getBytes(StandardCharsets.UTF_8));
    SiblingNames named = SiblingNames.of(script, path.begin() + "." + WHAT);
    return new SiblingNames(claims.stateFolder().resolve(WHAT), named.stem(), named.ending());
  }

  /**
   * Unsaved texts of windows that no longer exist, the newest first.
   *
   * @param onDisk text of the script; a side file with the same text is deleted
   * @param remarks receives a sentence for each that cannot be read
   */
  List<Recovered> fallen(String onDisk, List<String> remarks) {
    List<Recovered> found = new ArrayList<>();
    for (Path file : files()) {
      claims.claim(file).flatMap(claim -> read(file, claim, onDisk, remarks)).ifPresent(found::add);
    }
    found.sort(Comparator.comparing(Recovered::writtenAt).reversed());
    return List.copyOf(found);
  }

  /** All that are there, in use or not. */
  List<Path> files() {
    return folders.stream().flatMap(names -> files(names).stream()).toList();
  }

  private static List<Path> files(SiblingNames names) {
    List<Path> files = new ArrayList<>();
    try (DirectoryStream<Path> entries =
        Files.newDirectoryStream(
            names.folder(), file -> names.number(file).isPresent() && Files.isRegularFile(file))) {
      entries.forEach(files::add);
    } catch (IOException | DirectoryIteratorException e) {
      files.clear(); // there is no such folder, or it cannot be listed
    }
    return files;
  }

  private Optional<Recovered> read(
      Path file, SideFileLocks.Claim claim, String onDisk, List<String> remarks) {
    try {
      String text = ScriptFile.text(file);
      if (!text.equals(onDisk)) {
        FileTime at = Files.getLastModifiedTime(file);
        boolean older = Files.exists(script) && Files.getLastModifiedTime(script).compareTo(at) > 0;
        return Optional.of(new Recovered(file, text, at, older, claim));
      }
      Files.deleteIfExists(file);
    } catch (ScriptFileException e) {
      remarks.add(String.valueOf(e.getMessage()));
    } catch (IOException e) {
      remarks.add(Wording.of("autosave.notRemoved", file));
    }
    claim.release();
    return Optional.empty();
  }

  /** A side file for a window that opens now. */
  AutosaveFile own() {
    return new AutosaveFile(folders.stream().map(this::free).toList());
  }

  private AutosaveFile.Place free(SiblingNames names) {
    for (long number = claims.firstNumber(); ; number++) {
      Path file = names.numbered(number);
      if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
        Optional<SideFileLocks.Claim> claim = claims.claim(file);
        if (claim.isPresent()) {
          return new AutosaveFile.Place(file, claim.get());
        }
      }
    }
  }
}
