package io.github.readfall.script;

import java.util.List;

/**
 * A run of panels in one place.
 *
 * @param number its place in the script, from 1
 * @param heading the text after SCENE; empty if none
 * @param line script line on which it begins, from 1
 * @param panels numbers of its panels, in order
 */
public record Scene(int number, String heading, int line, List<Integer> panels) {

  public Scene {
    panels = List.copyOf(panels);
  }
}
