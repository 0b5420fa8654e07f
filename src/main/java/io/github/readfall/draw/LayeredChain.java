package io.github.readfall.draw;

import io.github.readfall.base.geom.Path;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.type.balloon.JoinedOutline;
import io.github.readfall.type.balloon.ShapeKind;
import io.github.readfall.type.balloon.Tail;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Balloons drawn as one, divided into layers over one another.
 *
 * @param id of the first balloon
 * @param balloons outlines without their tails
 * @param joined outlines with their tails, cut out round these; empty if there are no tails
 * @param bubbles of thoughts
 * @param letters a group for each balloon
 * @param covered area of outlines, tails and their lines; no steps if there is no outline
 */
public record LayeredChain(
    String id,
    List<Mark> balloons,
    Optional<Mark.Clip> joined,
    List<Mark> bubbles,
    List<Mark> letters,
    Path covered) {

  /**
   * Distance round a tail within which the outline is drawn again, in widths of its line. House
   * default.
   */
  private static final double SURROUNDINGS = 1.5;

  public LayeredChain {
    balloons = List.copyOf(balloons);
    bubbles = List.copyOf(bubbles);
    letters = List.copyOf(letters);
  }

  /** The chains of a strip, in script order. */
  public static List<LayeredChain> of(Galley galley) {
    return GalleyArtist.chains(galley).stream().map(LayeredChain::of).toList();
  }

  private static LayeredChain of(List<PlacedBalloon> chain) {
    SetBalloon first = chain.get(0).set();
    List<Mark> letters = chain.stream().map(GalleyArtist::letters).toList();
    if (chain.size() == 1 && first.look().shape() == ShapeKind.NONE) {
      Path nothing = new Path(List.of());
      return new LayeredChain(
          first.cue().id(), List.of(), Optional.empty(), List.of(), letters, nothing);
    }
    Path whole = GalleyArtist.outline(chain, true);
    return new LayeredChain(
        first.cue().id(),
        BalloonArtist.lined(GalleyArtist.outline(chain, false), first),
        surroundings(chain).map(round -> new Mark.Clip(round, BalloonArtist.lined(whole, first))),
        chain.stream().flatMap(balloon -> GalleyArtist.bubbles(balloon).stream()).toList(),
        letters,
        whole.grownBy(BalloonArtist.lineWidthPx(first) / 2));
  }

  /** The part that tails change, to be laid over the balloons: the joined outlines, and bubbles. */
  public List<Mark> tails() {
    List<Mark> tails = new ArrayList<>(bubbles);
    joined.ifPresent(tails::add);
    return tails;
  }

  /** Round all tails that are joined with their outlines. */
  private static Optional<Path> surroundings(List<PlacedBalloon> chain) {
    SetBalloon first = chain.get(0).set();
    double reachPx =
        SURROUNDINGS * BalloonArtist.lineWidthPx(first)
            + JoinedOutline.reachPx(BalloonArtist.corner(first));
    return chain.stream()
        .filter(balloon -> !BalloonArtist.isThought(balloon.set()))
        .flatMap(balloon -> balloon.tails().stream())
        .map(Tail::outline)
        .map(outline -> outline.grownBy(reachPx))
        .reduce(Path::joinedWith);
  }
}
