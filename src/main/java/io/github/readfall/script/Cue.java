package io.github.readfall.script;

import java.util.List;

/**
 * One lettered line of the script: speaker, manner and words.
 *
 * @param id {@code pPANEL-CUE}, e.g. {@code p3-2}; may change when the script does
 * @param panel the panel's place in the script, from 1
 * @param number the cue's place in its panel, from 1
 * @param kind of the cue
 * @param speakers who say it together, mostly one: as in the cast if declared there, else as
 *     written; not empty
 * @param manners as written from left to right
 * @param text its words
 * @param line script line on which it begins, from 1
 * @param column in that line, in code points from 1
 */
public record Cue(
    String id,
    int panel,
    int number,
    CueKind kind,
    List<String> speakers,
    List<Manner> manners,
    CueText text,
    int line,
    int column) {

  private static final String TOGETHER = " & ";

  public Cue {
    speakers = List.copyOf(speakers);
    manners = List.copyOf(manners);
  }

  /** The first of the speakers, whose voice it is lettered in. */
  public String speaker() {
    return speakers.get(0);
  }

  /** The names of all speakers, as one: {@code Mara & Otis}. */
  public String names() {
    return String.join(TOGETHER, speakers);
  }

  /** The names that {@link #names} made one of. */
  public static List<String> namesIn(String names) {
    return List.of(names.split(TOGETHER, -1));
  }

  /** Returns true if it has this manner. */
  public boolean has(Manner manner) {
    return manners.contains(manner);
  }

  /** The same cue with other words. */
  Cue saying(CueText other) {
    return new Cue(id, panel, number, kind, speakers, manners, other, line, column);
  }
}
