package io.github.readfall.draw;

import io.github.readfall.base.geom.Path;
import io.github.readfall.strip.galley.Chain;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.type.balloon.JoinedOutline;
import io.github.readfall.type.balloon.Tail;
import java.util.ArrayList;
import java.util.List;

/** Draws the lettering of a galley: every balloon in its place, joined ones as one. */
public final class GalleyArtist {

  private GalleyArtist() {}

  /** The lettering, in script order. */
  public static List<Mark> lettering(Galley galley) {
    return chains(galley).stream().flatMap(chain -> drawn(chain).stream()).toList();
  }

  /** Balloons drawn as one, in script order; most of them alone. */
  static List<List<PlacedBalloon>> chains(Galley galley) {
    List<List<PlacedBalloon>> chains = new ArrayList<>();
    List<PlacedBalloon> chain = new ArrayList<>();
    for (PlacedBalloon balloon : galley.balloons()) {
      if (!chain.isEmpty() && !balloon.isJoinedWith(chain.get(chain.size() - 1))) {
        chains.add(List.copyOf(chain));
        chain.clear();
      }
      chain.add(balloon);
    }
    if (!chain.isEmpty()) {
      chains.add(List.copyOf(chain));
    }
    return chains;
  }

  static List<Mark> drawn(List<PlacedBalloon> chain) {
    if (chain.size() < 2) {
      return chain.stream().map(GalleyArtist::drawn).toList();
    }
    List<Mark> marks =
        new ArrayList<>(BalloonArtist.lined(outline(chain, true), chain.get(0).set()));
    for (PlacedBalloon balloon : chain) {
      marks.addAll(bubbles(balloon));
      marks.add(letters(balloon));
    }
    return marks;
  }

  /** The letters of a balloon in its place. */
  static Mark letters(PlacedBalloon balloon) {
    return new Mark.Group(
        balloon.id(),
        BalloonArtist.text(balloon.set()),
        BalloonArtist.letters(balloon.set(), balloon.at()));
  }

  private static Mark drawn(PlacedBalloon balloon) {
    return BalloonArtist.draw(balloon.set(), balloon.at(), ownTails(balloon));
  }

  /** Its tails in its own coordinates. */
  private static List<Tail> ownTails(PlacedBalloon balloon) {
    return balloon.tails().stream()
        .map(tail -> tail.movedBy(-balloon.at().x(), -balloon.at().y()))
        .toList();
  }

  /**
   * All outlines of a chain and the necks between them, as one.
   *
   * @param withTails whether its tails are part of it
   */
  static Path outline(List<PlacedBalloon> chain, boolean withTails) {
    if (chain.size() == 1) {
      PlacedBalloon only = chain.get(0);
      List<Tail> tails = withTails ? ownTails(only) : List.of();
      return BalloonArtist.outline(only.set(), tails).movedBy(only.at().x(), only.at().y());
    }
    List<Path> balloons = new ArrayList<>();
    List<Path> arms = new ArrayList<>();
    for (int i = 0; i < chain.size(); i++) {
      PlacedBalloon balloon = chain.get(i);
      balloons.add(balloon.set().outline().movedBy(balloon.at().x(), balloon.at().y()));
      if (i > 0) {
        PlacedBalloon above = chain.get(i - 1);
        arms.add(Chain.neck(above.set(), above.at(), balloon.set(), balloon.at()).outline());
      }
      if (withTails && !BalloonArtist.isThought(balloon.set())) {
        balloon.tails().stream().map(Tail::outline).forEach(arms::add);
      }
    }
    return JoinedOutline.of(balloons, arms, BalloonArtist.corner(chain.get(0).set()));
  }

  /** The bubbles from a thought to the person who thinks it. */
  static List<Mark> bubbles(PlacedBalloon balloon) {
    List<Mark> marks = new ArrayList<>();
    if (BalloonArtist.isThought(balloon.set())) {
      balloon
          .tails()
          .forEach(
              tail ->
                  tail.bubbles().forEach(b -> marks.addAll(BalloonArtist.lined(b, balloon.set()))));
    }
    return marks;
  }
}
