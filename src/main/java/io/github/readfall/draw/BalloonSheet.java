package io.github.readfall.draw;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import java.util.List;
import java.util.Optional;

/** Draws one balloon by itself, as it will look on the strip, with a tail. */
public final class BalloonSheet {

  /** Air for the line round the balloon, in margins. House default, no source. */
  private static final double EDGE_MARGINS = 0.5;

  private BalloonSheet() {}

  /**
   * The first balloon of an episode, in strip pixels; empty if it has none.
   *
   * @param paper background colour
   */
  public static Optional<Drawing> of(SetEpisode episode, Colour paper) {
    return episode.balloons().stream().findFirst().map(balloon -> drawn(balloon, episode, paper));
  }

  private static Drawing drawn(SetBalloon balloon, SetEpisode episode, Colour paper) {
    SheetItem item = SheetItem.of(List.of(balloon), true);
    double edgePx = EDGE_MARGINS * balloon.marginPx();
    Box box = item.box();
    return new Drawing(
        BalloonArtist.text(balloon),
        episode.script().language(),
        (int) Math.ceil(Math.max(1, box.width() + 2 * edgePx)),
        (int) Math.ceil(Math.max(1, box.height() + 2 * edgePx)),
        paper,
        item.draw(new XY(edgePx, edgePx)));
  }
}
