package io.github.readfall.bench;

import io.github.readfall.script.Keywords;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptReader;
import io.github.readfall.type.font.FaceException;
import io.github.readfall.type.font.FontShelf;
import java.nio.file.Path;
import java.util.SplittableRandom;

/** Scripts of any length, made of the words of the sample's world. */
final class Cues {

  private static final String[] WORDS =
      ("the keeper of the sluice went down at noon to look for water that was not there and came"
              + " back wet somehow with a piano under one arm and no good reason for it at all, madam;"
              + " nobody steals tides, they're on the shelf: neaps, springs, that odd little one")
          .split(" ");

  private Cues() {}

  static FontShelf shelf() {
    try {
      return FontShelf.bundled(Path.of("fonts-open"));
    } catch (FaceException e) {
      throw new IllegalStateException(e);
    }
  }

  /** A script of a number of cues of a number of words each, two to a panel. */
  static Script script(int cues, int words) {
    return script(cues, words, 2);
  }

  /** A script of a number of cues of a number of words each. */
  static Script script(int cues, int words, int toAPanel) {
    SplittableRandom random = new SplittableRandom(cues * 31L + words);
    StringBuilder text = new StringBuilder();
    for (int cue = 0; cue < cues; cue++) {
      text.append(cue % toAPanel == 0 ? "PANEL\n\n" : "");
      text.append(cue % 3 == 0 ? "PIM: " : "ODDA: ");
      for (int word = 0; word < words; word++) {
        text.append(word == 0 ? "" : " ").append(WORDS[random.nextInt(WORDS.length)]);
      }
      text.append(".\n\n");
    }
    return new ScriptReader().read(text.toString(), Keywords.ENGLISH).script();
  }
}
