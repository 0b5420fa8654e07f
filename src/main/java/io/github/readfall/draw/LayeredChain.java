package io.github.readfall.draw;

import io.github.readfall.balloon.ShapeKind;
import io.github.readfall.balloon.Tail;
import io.github.readfall.galley.Galley;
import io.github.readfall.galley.PlacedBalloon;
import io.github.readfall.geom.Path;
import io.github.readfall.style.LineStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Balloons that are drawn as one, taken apart into layers that lie over one another.
 *
 * @param id of the first balloon
 * @param says what all of them say
 * @param balloons outlines without their tails; a dashed one with them, since its dashes run on
 *     along the tail
 * @param tails what the tails change of that: bubbles, and cut-outs of the outline with its tail
 * @param letters a group for each balloon
 * @param covered what outline, tails and their lines cover; no steps where there is no outline
 */
public record LayeredChain(
    String id,
    String says,
    List<Mark> balloons,
    List<Mark> tails,
    List<Mark> letters,
    Path covered) {

  /** How far round a tail the outline is drawn anew, in widths of its line. House default. */
  private static final double SURROUNDINGS = 1.5;

  private static final Path NOTHING = new Path(List.of());

  public LayeredChain {
    balloons = List.copyOf(balloons);
    tails = List.copyOf(tails);
    letters = List.copyOf(letters);
  }

  /** The chains of a strip, in script order. */
  public static List<LayeredChain> of(Galley galley) {
    return GalleyArtist.chains(galley).stream().map(LayeredChain::of).toList();
  }

  private static LayeredChain of(List<PlacedBalloon> chain) {
    PlacedBalloon first = chain.get(0);
    List<Mark> letters = chain.stream().map(GalleyArtist::letters).toList();
    List<String> said = chain.stream().map(b -> BalloonArtist.text(b.set())).toList();
    boolean lined = chain.size() > 1 || first.set().look().shape() != ShapeKind.NONE;
    List<Mark> balloons = new ArrayList<>();
    List<Mark> tails = new ArrayList<>();
    Path covered = NOTHING;
    if (lined) {
      Path whole = GalleyArtist.outline(chain, true);
      covered = whole.grownBy(BalloonArtist.lineWidthPx(first.set()) / 2);
      boolean dashed = first.set().look().lineStyle() == LineStyle.DASHED;
      Path plain = dashed ? whole : GalleyArtist.outline(chain, false);
      balloons.addAll(BalloonArtist.lined(plain, first.set()));
      if (!dashed) {
        surroundings(chain)
            .ifPresent(
                around ->
                    tails.add(new Mark.Clip(around, BalloonArtist.lined(whole, first.set()))));
      }
    }
    chain.forEach(balloon -> tails.addAll(GalleyArtist.bubbles(balloon)));
    return new LayeredChain(first.id(), String.join(" ", said), balloons, tails, letters, covered);
  }

  /**
   * Round all tails that are joined with their outlines, as far as these differ from plain ones.
   */
  private static Optional<Path> surroundings(List<PlacedBalloon> chain) {
    double reachPx = SURROUNDINGS * BalloonArtist.lineWidthPx(chain.get(0).set());
    return chain.stream()
        .filter(balloon -> !BalloonArtist.isThought(balloon.set()))
        .flatMap(balloon -> balloon.tail().stream())
        .map(Tail::outline)
        .map(outline -> outline.grownBy(reachPx))
        .reduce(Path::joinedWith);
  }
}
