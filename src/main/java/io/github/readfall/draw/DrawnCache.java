package io.github.readfall.draw;

import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;

/**
 * Keeps the last drawing of each balloon, so that balloons that have not changed are not drawn
 * again: a person who types changes one of a hundred. Safe to share between threads.
 */
public final class DrawnCache {

  /** By the first balloon of a chain; guarded by this object. */
  private final IdentityHashMap<SetBalloon, Drawn> last = new IdentityHashMap<>();

  private record Drawn(List<PlacedBalloon> chain, List<Mark> marks) {

    /** Returns true if the same balloons are in the same places. */
    boolean isOf(List<PlacedBalloon> others) {
      boolean same = chain.size() == others.size();
      for (int i = 0; same && i < chain.size(); i++) {
        same = isSame(chain.get(i), others.get(i));
      }
      return same;
    }

    /** Two that are only equal count as different: to compare them takes longer than to draw. */
    @SuppressWarnings("ReferenceEquality")
    private static boolean isSame(PlacedBalloon a, PlacedBalloon b) {
      return a.set() == b.set() && a.at().equals(b.at()) && a.tails().equals(b.tails());
    }
  }

  /** The lettering of a galley, as {@link GalleyArtist#lettering}. */
  synchronized List<Mark> lettering(Galley galley) {
    IdentityHashMap<SetBalloon, Drawn> now = new IdentityHashMap<>();
    List<Mark> marks = new ArrayList<>();
    for (List<PlacedBalloon> chain : GalleyArtist.chains(galley)) {
      SetBalloon first = chain.get(0).set();
      Drawn drawn =
          Optional.ofNullable(last.get(first))
              .filter(known -> known.isOf(chain))
              .orElseGet(() -> new Drawn(chain, GalleyArtist.drawn(chain)));
      now.put(first, drawn);
      marks.addAll(drawn.marks());
    }
    last.clear();
    last.putAll(now);
    return marks;
  }
}
