package io.github.readfall.languages.xliff;

import io.github.readfall.languages.xliff.InlineText.Written;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Supplies the codes for the signs of a text: those already in the unit, in their order, so that
 * the codes of a target match those of its source; then new ones.
 */
final class SignPool {

  private final List<Written> free;
  private final List<Written> handedOut = new ArrayList<>();
  private final Set<String> used;
  private final boolean hasData;

  /**
   * The codes of a unit.
   *
   * @param there codes that may be used again
   * @param used every id of the unit
   * @param hasData whether the unit has original data for the signs
   */
  SignPool(List<Written> there, Set<String> used, boolean hasData) {
    this.free = new ArrayList<>();
    for (Written each : there) {
      if (free.stream().noneMatch(other -> other.id().equals(each.id()))) {
        free.add(each);
      }
    }
    this.used = new HashSet<>(used);
    free.forEach(each -> this.used.add(each.id()));
    this.hasData = hasData;
  }

  /** The next code for a sign. */
  Written next(Sign sign) {
    Written next =
        free.stream().filter(each -> each.sign() == sign).findFirst().orElseGet(() -> fresh(sign));
    free.remove(next);
    handedOut.add(next);
    return next;
  }

  /** All that were handed out, in order. */
  List<Written> handedOut() {
    return List.copyOf(handedOut);
  }

  private Written fresh(Sign sign) {
    int number = 1;
    while (!used.add(sign.letter() + number)) {
      number++;
    }
    return new Written(sign, sign.letter() + number, sign.attributes() + data(sign));
  }

  private String data(Sign sign) {
    if (!hasData) {
      return "";
    }
    String id = sign.dataId();
    return sign == Sign.BREAK
        ? " dataRef=\"" + id + "\""
        : " dataRefStart=\"" + id + "\" dataRefEnd=\"" + id + "\"";
  }
}
