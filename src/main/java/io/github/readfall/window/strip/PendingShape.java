package io.github.readfall.window.strip;

import io.github.readfall.base.geom.Box;
import io.github.readfall.strip.Extra;
import io.github.readfall.strip.KeepClear;
import io.github.readfall.strip.edits.StripEdit;
import io.github.readfall.strip.edits.StripItem;

/** A shape that is about to be drawn on the strip. */
public sealed interface PendingShape {

  /** The change that a drawn box makes. */
  StripEdit in(Box box);

  /** The size if no box is drawn, as a share of the strip's width. */
  double share();

  /** An area to keep clear. */
  record Area() implements PendingShape {
    @Override
    public StripEdit in(Box box) {
      return new StripEdit.AddArea(new KeepClear(box, "", Extra.NONE));
    }

    @Override
    public double share() {
      return 0.25;
    }
  }

  /**
   * A panel's box.
   *
   * @param panel its position in the script, from 1
   */
  record Panel(int panel) implements PendingShape {
    @Override
    public StripEdit in(Box box) {
      return new StripEdit.PutPanel(panel, box);
    }

    @Override
    public double share() {
      return 0.9;
    }
  }

  /** The position of a mouth: the middle of the drawn box. */
  record Mouth(StripItem.Mouth mouth) implements PendingShape {
    @Override
    public StripEdit in(Box box) {
      return new StripEdit.PutMouth(mouth, box.centre());
    }

    @Override
    public double share() {
      return 0;
    }
  }
}
