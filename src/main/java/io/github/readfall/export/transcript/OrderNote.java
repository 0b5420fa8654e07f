package io.github.readfall.export.transcript;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.plan.order.Displaced;
import io.github.readfall.plan.order.ReadingOrder;
import io.github.readfall.script.Cue;
import io.github.readfall.strip.galley.Galley;
import java.util.ArrayList;
import java.util.List;

/** Notes where the reading order of a strip is not the script's. */
final class OrderNote {

  private OrderNote() {}

  /** A sentence for each balloon that would have to move; none if the orders are the same. */
  static List<String> of(Galley galley) {
    ReadingOrder order = ReadingOrder.of(galley);
    List<String> sentences = new ArrayList<>();
    for (Displaced moved : order.displaced()) {
      int other = moved.others().get(0);
      int earlier = Math.min(moved.index(), other);
      int later = Math.max(moved.index(), other);
      sentences.add(
          Wording.of("transcript.order", name(galley, order, later), name(galley, order, earlier)));
    }
    return sentences;
  }

  private static String name(Galley galley, ReadingOrder order, int balloon) {
    Cue cue = galley.set().script().cue(order.stops().get(balloon).id()).orElseThrow();
    String who = Vocabulary.who(cue, galley.set().script().keywords());
    return Wording.of("transcript.line", cue.number(), cue.panel(), who);
  }
}
