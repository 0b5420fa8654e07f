package io.github.readfall.script;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A picture of the strip as the script describes it.
 *
 * @param number its place in the script, from 1
 * @param label the number or name after PANEL; empty if none
 * @param heading shot size and hints as written; empty if none
 * @param description of the picture, a line each
 * @param cues in order
 * @param line script line on which it begins, from 1
 * @param scene number of its scene; empty if there is none
 */
public record Panel(
    int number,
    String label,
    String heading,
    List<String> description,
    List<Cue> cues,
    int line,
    Optional<Integer> scene) {

  public Panel {
    description = List.copyOf(description);
    cues = List.copyOf(cues);
  }

  /** The hints of the heading. */
  public ShotHints hints() {
    return ShotHints.of(heading);
  }

  /** The same panel with other words in its cues. */
  Panel saying(Function<Cue, CueText> words) {
    List<Cue> said = cues.stream().map(cue -> cue.saying(words.apply(cue))).toList();
    return new Panel(number, label, heading, description, said, line, scene);
  }
}
