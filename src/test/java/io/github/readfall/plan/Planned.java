package io.github.readfall.plan;

import io.github.readfall.font.FaceException;
import io.github.readfall.font.FontShelf;
import io.github.readfall.script.ReadScript;
import io.github.readfall.script.ScriptReader;
import io.github.readfall.style.ReadStyle;
import io.github.readfall.style.StyleReader;
import io.github.readfall.typeset.SetEpisode;
import io.github.readfall.typeset.Typesetter;
import java.nio.file.Path;

/** Episodes set from text, for tests. */
final class Planned {

  private Planned() {}

  static SetEpisode set(String script) {
    return set(script, "");
  }

  static SetEpisode set(String script, String toml) {
    ReadStyle style = new StyleReader().read(toml, "series.toml");
    if (!style.findings().isEmpty()) {
      throw new AssertionError(style.findings());
    }
    ReadScript read = new ScriptReader().read(script, style.style().keywords());
    try {
      FontShelf shelf = FontShelf.bundled(Path.of("fonts-open"));
      return new Typesetter(shelf, style.style()).set(read.script());
    } catch (FaceException e) {
      throw new AssertionError(e);
    }
  }
}
