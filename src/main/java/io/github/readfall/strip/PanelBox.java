package io.github.readfall.strip;

import io.github.readfall.base.geom.Box;
import io.github.readfall.script.Panel;

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

  /** What a PANEL line says: label and heading. */
  public static String heading(Panel panel) {
    return (panel.label() + " " + panel.heading()).strip();
  }

  /** The same panel with another heading. */
  PanelBox headed(String otherHeading) {
    return new PanelBox(panel, box, otherHeading, extra);
  }

  /** The same box for another panel of the script. */
  public PanelBox of(int number) {
    return new PanelBox(number, box, heading, extra);
  }

  /** The same panel at another place. */
  public PanelBox at(Box other) {
    return new PanelBox(panel, other, heading, extra);
  }
}
