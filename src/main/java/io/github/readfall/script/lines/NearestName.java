package io.github.readfall.script.lines;

import io.github.readfall.base.finding.Spelling;
import io.github.readfall.script.Letters;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Finds the name that was probably meant. */
public final class NearestName {

  /** One slip in this many letters still leaves a name recognisable. House default, no source. */
  private static final int LETTERS_PER_SLIP = 4;

  /** Bounds that no list of people comes near, so that nonsense takes no time. */
  private static final int MAX_LENGTH = 100;

  private static final int MAX_NAMES = 500;

  private NearestName() {}

  /**
   * The nearest of the names, in any case, if it is near enough: one slip for each four letters
   * (one for three).
   */
  public static Optional<String> of(String name, Collection<String> names) {
    String wanted = Letters.fold(name);
    if (wanted.length() > MAX_LENGTH) {
      return Optional.empty();
    }
    int best = Math.max(wanted.length() >= 3 ? 1 : 0, wanted.length() / LETTERS_PER_SLIP) + 1;
    Optional<String> nearest = Optional.empty();
    List<String> looked = names.stream().limit(MAX_NAMES).toList();
    for (String candidate : looked) {
      String folded = Letters.fold(candidate);
      if (Math.abs(folded.length() - wanted.length()) < best) {
        int slips = Spelling.between(wanted, folded);
        if (slips < best) {
          best = slips;
          nearest = Optional.of(candidate);
        }
      }
    }
    return nearest;
  }
}
