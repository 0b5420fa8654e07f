package io.github.readfall.lettering.typeset;

import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptReader;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.font.OpenFaces;
import java.util.List;

/** Cues written in a test, set in the bundled faces. */
public final class Sample {

  private Sample() {}

  /** The bundled faces. */
  public static FontShelf shelf() {
    return OpenFaces.shelf();
  }

  /** A script of one panel, its cues as they would be typed. */
  public static Script script(String language, String... cues) {
    String text = "Language: " + language + "\n\nPANEL 1\n\n" + String.join("\n", cues) + "\n";
    return new ScriptReader().read(text, Keywords.ENGLISH).script();
  }

  /** Cues shaped by the built-in style. */
  public static List<ShapedCue> shaped(FontShelf shelf, String language, String... cues) {
    return new Typesetter(shelf, HouseStyle.DEFAULT).shape(script(language, cues));
  }

  /** Cues set by the built-in style. */
  public static List<SetBalloon> set(FontShelf shelf, String language, String... cues) {
    return new Typesetter(shelf, HouseStyle.DEFAULT).set(script(language, cues)).balloons();
  }
}
