package io.github.readfall.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;

/** The licences of the program, of its libraries, and of its faces. */
final class Licences {

  private Licences() {}

  /** All of them, one after the other. */
  static String text() throws CannotProceed {
    StringBuilder text = new StringBuilder(resource("licences.txt"));
    for (var family : ProgramFiles.bundledFonts().manifest().families()) {
      text.append("\n\n==== Face: ").append(family.name()).append(' ').append(family.version());
      text.append(", ").append(family.licence()).append(", from ").append(family.source());
      text.append(" ====\n\n").append(licence(family.folder()));
    }
    return text.append('\n').toString();
  }

  private static String licence(String family) throws CannotProceed {
    Path file = ProgramFiles.folder().resolve("fonts-open").resolve(family).resolve("OFL.txt");
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new CannotProceed(file + " cannot be read: unpack the program again.");
    }
  }

  private static String resource(String name) {
    try (InputStream in = Licences.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException("cannot read " + name + " of our own", e);
    }
  }
}
