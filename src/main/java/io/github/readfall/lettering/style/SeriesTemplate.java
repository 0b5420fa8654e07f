package io.github.readfall.lettering.style;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** The template of a new series. */
public final class SeriesTemplate {

  private SeriesTemplate() {}

  /** A series.toml with every key, each commented out and with its built-in value. */
  public static String seriesToml() {
    return resource("series.toml");
  }

  /** A script of four panels with everything that most scripts have. */
  public static String script() {
    return resource("script.txt");
  }

  private static String resource(String name) {
    try (InputStream in = SeriesTemplate.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + name + " of our own", e);
    }
  }
}
