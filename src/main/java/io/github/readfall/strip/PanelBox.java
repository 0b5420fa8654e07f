package io.github.readfall.strip;

import io.github.readfall.base.geom.Box;
import io.github.readfall.script.Panel;

/**
 * The box of a panel on the strip.
 *
 * @param panel its place in the script, from 1
 * @param box its border, in strip pixels
 * @param heading the script's PANEL line when the box was written, by which the panel is found
 *     again when others come and go; empty if the file has none
 * @param extra keys that this version does not know
 */
public record PanelBox(int panel, Box box, String heading, Extra extra) {

  public PanelBox(int panel, Box box) {
    this(panel, box, "", Extra.NONE);
  }

  /** The text of a PANEL line: label and heading. */
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
