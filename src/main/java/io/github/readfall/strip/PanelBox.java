package io.github.readfall.strip;

import io.github.readfall.geom.Box;

/**
 * Where a panel lies on the strip.
 *
 * @param panel its place in the script, from 1
 * @param box its border, in strip pixels
 * @param heading what the script's PANEL line said when the box was written, so that the panel is
 *     known again when others come and go; empty where the file does not say
 * @param extra keys that this version does not know
 */
public record PanelBox(int panel, Box box, String heading, Extra extra) {

  public PanelBox(int panel, Box box) {
    this(panel, box, "", Extra.NONE);
  }

  /** The same panel at another place. */
  public PanelBox at(Box other) {
    return new PanelBox(panel, other, heading, extra);
  }
}
