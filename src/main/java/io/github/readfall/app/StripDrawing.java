package io.github.readfall.app;

import io.github.readfall.canvas.StripScene;
import io.github.readfall.desk.Chosen;
import io.github.readfall.desk.Desk;
import io.github.readfall.desk.Shown;
import io.github.readfall.desk.StripWork;
import io.github.readfall.edits.Item;
import io.github.readfall.geom.Box;
import io.github.readfall.geom.XY;
import io.github.readfall.wording.Wording;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Waits for something to be drawn on the strip, puts it there, and chooses it. */
final class StripDrawing {

  private static final String TOPIC = "drawing";

  private final Desk<StripScene> desk;
  private final StripWork work;
  private final Chosen chosen;
  private final NoticeBar notices;
  private Optional<Drawing> awaited = Optional.empty();

  StripDrawing(Desk<StripScene> desk, StripWork work, Chosen chosen, NoticeBar notices) {
    this.desk = desk;
    this.work = work;
    this.chosen = chosen;
    this.notices = notices;
  }

  /** What is waited for. */
  Optional<Drawing> awaited() {
    return awaited;
  }

  /**
   * Waits for something.
   *
   * @param inMiddle draws it in the middle of what is seen
   */
  void begin(Drawing next, Runnable inMiddle) {
    awaited = Optional.of(next);
    notices.tell(
        new Notice(
            TOPIC,
            Wording.of(next instanceof Drawing.Mouth ? "drawing.point" : "drawing.box"),
            List.of(new Notice.Way(Wording.of("drawing.middle"), inMiddle))));
  }

  /** Waits no more. */
  void end() {
    awaited = Optional.empty();
    notices.drop(TOPIC);
  }

  /** A box of the usual size round a place, in whole strip pixels. */
  Box usual(XY at, double stripWidthPx) {
    double side = Math.rint(awaited.map(Drawing::share).orElse(0.0) * stripWidthPx);
    return new Box(Math.rint(at.x() - side / 2), Math.rint(at.y() - side / 2), side, side);
  }

  /** Puts something on the strip that was drawn. */
  void put(Drawing what, Box box) {
    work.edit(name(what), "", what.in(box));
    desk.whenSettled(() -> choose(what));
  }

  private static String name(Drawing what) {
    if (what instanceof Drawing.Panel panel) {
      return Wording.of("undo.drawPanel", panel.panel());
    }
    return what instanceof Drawing.Mouth mouth
        ? Wording.of("undo.mouth", mouth.mouth().speaker())
        : Wording.of("undo.area");
  }

  private void choose(Drawing what) {
    if (what instanceof Drawing.Panel panel) {
      chosen.choose(Set.of(new Item.Panel(panel.panel())));
    } else if (what instanceof Drawing.Mouth mouth) {
      chosen.choose(Set.of(mouth.mouth()));
    } else {
      desk.shown()
          .map(Shown::galley)
          .map(galley -> galley.keepClear().size())
          .filter(count -> count > 0)
          .ifPresent(count -> chosen.choose(Set.of(new Item.Area(count - 1))));
    }
  }
}
