package io.github.readfall.draw;

import io.github.readfall.balloon.ShapeKind;
import io.github.readfall.balloon.Tail;
import io.github.readfall.galley.Chain;
import io.github.readfall.galley.Galley;
import io.github.readfall.galley.PlacedBalloon;
import io.github.readfall.geom.Path;
import java.util.ArrayList;
import java.util.List;

/** Draws the lettering of a galley: every balloon in its place, joined ones as one. */
public final class GalleyArtist {

  private GalleyArtist() {}

  /** The lettering, in script order. */
  public static List<Mark> lettering(Galley galley) {
    return chains(galley).stream().flatMap(chain -> drawn(chain).stream()).toList();
  }

  /** Balloons that are drawn as one, in script order; most of them alone. */
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
    List<Mark> marks = new ArrayList<>(BalloonArtist.lined(outline(chain), chain.get(0).set()));
    for (PlacedBalloon balloon : chain) {
      marks.addAll(bubbles(balloon));
      marks.add(
          new Mark.Group(
              balloon.id(),
              BalloonArtist.text(balloon.set()),
              BalloonArtist.letters(balloon.set(), balloon.at())));
    }
    return marks;
  }

  private static Mark drawn(PlacedBalloon balloon) {
    double x = -balloon.at().x();
    double y = -balloon.at().y();
    return BalloonArtist.draw(
        balloon.set(), balloon.at(), balloon.tail().map(tail -> tail.movedBy(x, y)));
  }

  /** All outlines, the necks between them and their tails, as one. */
  private static Path outline(List<PlacedBalloon> chain) {
    Path all = new Path(List.of());
    for (int i = 0; i < chain.size(); i++) {
      PlacedBalloon balloon = chain.get(i);
      all = all.joinedWith(balloon.set().outline().movedBy(balloon.at().x(), balloon.at().y()));
      if (i > 0) {
        PlacedBalloon above = chain.get(i - 1);
        all =
            all.joinedWith(
                Chain.neck(above.set(), above.at(), balloon.set(), balloon.at()).outline());
      }
      if (!isThought(balloon)) {
        all = balloon.tail().map(Tail::outline).map(all::joinedWith).orElse(all);
      }
    }
    return all;
  }

  private static List<Mark> bubbles(PlacedBalloon balloon) {
    List<Mark> marks = new ArrayList<>();
    if (isThought(balloon)) {
      balloon
          .tail()
          .ifPresent(
              tail ->
                  tail.bubbles().forEach(b -> marks.addAll(BalloonArtist.lined(b, balloon.set()))));
    }
    return marks;
  }

  private static boolean isThought(PlacedBalloon balloon) {
    return balloon.set().look().shape() == ShapeKind.CLOUD;
  }
}
