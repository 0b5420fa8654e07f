package io.github.readfall.export.transcript;

import java.util.List;
import java.util.OptionalInt;

/**
 * Panels of one scene, or panels that belong to none.
 *
 * @param number the scene's place in the script, from 1; empty if there is no scene
 * @param place of the scene, in the script's language; may be empty
 * @param panels in script order
 */
public record TranscribedScene(OptionalInt number, String place, List<TranscribedPanel> panels) {

  public TranscribedScene {
    panels = List.copyOf(panels);
  }
}
