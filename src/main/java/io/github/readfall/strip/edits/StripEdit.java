package io.github.readfall.strip.edits;

import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.strip.AppliedFix;
import io.github.readfall.strip.KeepClear;
import io.github.readfall.strip.Layout;
import io.github.readfall.type.balloon.ShapeKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * A change that a person makes to a strip by hand. Lengths are strip pixels. Parts that it does not
 * suit stay as they are. A balloon moved or sized by hand is pinned from then on.
 */
public sealed interface StripEdit {

  /** The layout after the change. */
  Layout in(Layout layout);

  /**
   * Moves balloons; the tips of their tails stay.
   *
   * @param balloons ids of their cues
   */
  record Move(Set<String> balloons, double dx, double dy) implements StripEdit {

    public Move {
      balloons = Set.copyOf(balloons);
    }

    @Override
    public Layout in(Layout layout) {
      return BalloonEdits.changed(
          layout,
          balloons,
          balloon -> balloon.at(balloon.box().map(box -> box.movedBy(dx, dy))).pinned(true));
    }
  }

  /**
   * Gives a balloon another box.
   *
   * @param balloon id of its cue
   */
  record Size(String balloon, Box box) implements StripEdit {
    @Override
    public Layout in(Layout layout) {
      return BalloonEdits.changed(
          layout, Set.of(balloon), laid -> laid.at(Optional.of(box)).pinned(true));
    }
  }

  /**
   * Gives balloons another outline.
   *
   * @param balloons ids of their cues
   * @param shape empty to leave it to their voices
   */
  record Shape(Set<String> balloons, Optional<ShapeKind> shape) implements StripEdit {

    public Shape {
      balloons = Set.copyOf(balloons);
    }

    @Override
    public Layout in(Layout layout) {
      return BalloonEdits.changed(layout, balloons, balloon -> balloon.shaped(shape));
    }
  }

  /**
   * Has a balloon set in a number of lines.
   *
   * @param balloon id of its cue
   * @param lines empty to have it chosen
   * @param size of its outline then; its middle stays
   */
  record Lines(String balloon, OptionalInt lines, Box size) implements StripEdit {
    @Override
    public Layout in(Layout layout) {
      return BalloonEdits.changed(
          layout,
          Set.of(balloon),
          laid -> laid.inLines(lines).at(laid.box().map(old -> old.resized(size))));
    }
  }

  /**
   * Pins or unpins balloons.
   *
   * @param balloons ids of their cues
   */
  record Pin(Set<String> balloons, boolean pinned) implements StripEdit {

    public Pin {
      balloons = Set.copyOf(balloons);
    }

    @Override
    public Layout in(Layout layout) {
      return BalloonEdits.changed(layout, balloons, balloon -> balloon.pinned(pinned));
    }
  }

  /**
   * Sets the tip of one of a balloon's tails.
   *
   * @param balloon id of its cue
   * @param tail from 0
   */
  record Aim(String balloon, int tail, XY tip) implements StripEdit {
    @Override
    public Layout in(Layout layout) {
      return BalloonEdits.changed(layout, Set.of(balloon), laid -> laid.withTip(tail, tip));
    }
  }

  /**
   * Has the tips of a balloon's tails computed.
   *
   * @param balloon id of its cue
   */
  record FreeTails(String balloon) implements StripEdit {
    @Override
    public Layout in(Layout layout) {
      return BalloonEdits.changed(layout, Set.of(balloon), laid -> laid.withTips(List.of()));
    }
  }

  /**
   * Moves or resizes a panel's box. If its size stays, its balloons, mouths and areas move along.
   *
   * @param panel its place in the script, from 1
   */
  record PutPanel(int panel, Box box) implements StripEdit {
    @Override
    public Layout in(Layout layout) {
      return SetPanel.in(layout, panel, box);
    }
  }

  /** Marks an area that nothing may cover. */
  record AddArea(KeepClear area) implements StripEdit {
    @Override
    public Layout in(Layout layout) {
      List<KeepClear> areas = new ArrayList<>(layout.keepClear());
      areas.add(area);
      return layout.withKeepClear(areas);
    }
  }

  /**
   * Moves or resizes an area to keep clear.
   *
   * @param index from 0
   */
  record PutArea(int index, Box box) implements StripEdit {
    @Override
    public Layout in(Layout layout) {
      List<KeepClear> areas = new ArrayList<>(layout.keepClear());
      if (index < areas.size()) {
        KeepClear old = areas.get(index);
        areas.set(index, new KeepClear(box, old.what(), old.extra()));
      }
      return layout.withKeepClear(areas);
    }
  }

  /**
   * Removes an area to keep clear.
   *
   * @param index from 0
   */
  record DropArea(int index) implements StripEdit {
    @Override
    public Layout in(Layout layout) {
      List<KeepClear> areas = new ArrayList<>(layout.keepClear());
      if (index < areas.size()) {
        areas.remove(index);
      }
      return layout.withKeepClear(areas);
    }
  }

  /** Sets a speaker's mouth. Tails that ended at it move along. */
  record PutMouth(StripItem.Mouth mouth, XY at) implements StripEdit {
    @Override
    public Layout in(Layout layout) {
      return SetMouth.in(layout, mouth, Optional.of(at));
    }
  }

  /** Removes a speaker's mouth. */
  record DropMouth(StripItem.Mouth mouth) implements StripEdit {
    @Override
    public Layout in(Layout layout) {
      return SetMouth.in(layout, mouth, Optional.empty());
    }
  }

  /**
   * Opens the gutter above a panel, or closes it as far as it goes.
   *
   * @param panel its place in the script, from 1
   * @param byPx how far the panel and everything below move down; negative to close the gutter
   */
  record Gutter(int panel, double byPx) implements StripEdit {
    @Override
    public Layout in(Layout layout) {
      return GutterRoom.opening(layout, panel, byPx).map(o -> o.in(layout)).orElse(layout);
    }
  }

  /** Applies the fix that a finding offers, also to what is pinned, since a person asks for it. */
  record Fixed(Fix fix) implements StripEdit {
    @Override
    public Layout in(Layout layout) {
      return AppliedFix.byHand(layout, fix);
    }
  }

  /** Makes several changes in turn. */
  record Several(List<StripEdit> edits) implements StripEdit {

    public Several {
      edits = List.copyOf(edits);
    }

    @Override
    public Layout in(Layout layout) {
      Layout changed = layout;
      for (StripEdit edit : edits) {
        changed = edit.in(changed);
      }
      return changed;
    }
  }
}
