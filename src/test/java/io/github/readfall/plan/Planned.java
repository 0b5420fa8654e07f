package io.github.readfall.plan;

import io.github.readfall.lettering.style.ReadStyle;
import io.github.readfall.lettering.style.StyleReader;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.script.read.ReadScript;
import io.github.readfall.script.read.ScriptReader;
import io.github.readfall.type.font.OpenFaces;

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
    return new Typesetter(OpenFaces.shelf(), style.style()).set(read.script());
  }
}
