package io.github.readfall.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The program's version, as the build wrote it. */
final class Version implements IVersionProvider {

  @Override
  public String[] getVersion() {
    return new String[] {"Readfall " + number()};
  }

  static String number() {
    try (InputStream in = Version.class.getResourceAsStream("version.properties")) {
      Properties properties = new Properties();
      properties.load(Objects.requireNonNull(in));
      return properties.getProperty("version", "");
    } catch (IOException e) {
      throw new IllegalStateException("cannot read the version", e);
    }
  }
}
