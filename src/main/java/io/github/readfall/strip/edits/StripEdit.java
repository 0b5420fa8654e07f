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
import java.util.Set;

/**
 * A change that a person makes to a strip by hand. Lengths are strip pixels. What it does not fit
 * stays as it is; a balloon that is moved or sized by hand is pinned from then on.
 */
public sealed interface StripEdit {

  /** The layout with the change made. */
  Layout in(Layout layout);

  /**
   * Moves balloons, their tails' tips left where they are.
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
          balloon ->
              balloon
                  .at(balloon.box().map(box -> box.movedBy(dx, dy)), balloon.tailTo())
                  .pinned(true));
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
          layout, Set.of(balloon), laid -> laid.at(Optional.of(box), laid.tailTo()).pinned(true));
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
   * Pins balloons, or lets them go.
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
   * Ends a balloon's tail somewhere.
   *
   * @param balloon id of its cue
   * @param tip empty to leave it to be worked out
   */
  record Aim(String balloon, Optional<XY> tip) implements StripEdit {
    @Override
    public Layout in(Layout layout) {
      return BalloonEdits.changed(layout, Set.of(balloon), laid -> laid.withTip(tip));
    }
  }

  /**
   * Puts a panel's box somewhere. Where it keeps its size it takes along what is in it: its
   * balloons, mouths and areas.
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
   * Puts an area to keep clear somewhere else.
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
   * Takes an area away, so that it may be covered.
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

  /** Says where somebody's mouth is. The tails that ended at it go along. */
  record PutMouth(StripItem.Mouth mouth, XY at) implements StripEdit {
    @Override
    public Layout in(Layout layout) {
      return SetMouth.in(layout, mouth, Optional.of(at));
    }
  }

  /** Says no more where somebody's mouth is. */
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
   * @param byPx how far it and all below move down; negative to close it
   */
  record Gutter(int panel, double byPx) implements StripEdit {
    @Override
    public Layout in(Layout layout) {
      return GutterRoom.opening(layout, panel, byPx).map(o -> o.in(layout)).orElse(layout);
    }
  }

  /**
   * Makes the change that a finding offers; to what is pinned as well, since a person asks for it.
   */
  record Mended(Fix mend) implements StripEdit {
    @Override
    public Layout in(Layout layout) {
      return AppliedFix.byHand(layout, mend);
    }
  }

  /** Makes changes one after the other. */
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
