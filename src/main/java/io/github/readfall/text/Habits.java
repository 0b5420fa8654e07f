package io.github.readfall.text;

import java.util.Set;

/**
 * What a script or a language does with its letters.
 *
 * @param capitals whether it can be lettered in capitals
 * @param apart whether its letters may be spaced apart; those that join or carry marks on both
 *     sides are not
 * @param stress how a word is made to stand out
 * @param compression which full-width marks give up their empty half
 * @param conventions what is typed otherwise than it is lettered
 */
public record Habits(
    boolean capitals,
    boolean apart,
    Stress stress,
    Compression compression,
    Set<Convention> conventions) {

  static final Habits CASED = new Habits(true, true, Stress.LEAN, Compression.NONE, Set.of());
  static final Habits SQUARE = new Habits(false, true, Stress.WEIGHT, Compression.NONE, Set.of());
  static final Habits JOINED = new Habits(false, false, Stress.WEIGHT, Compression.NONE, Set.of());

  public Habits {
    conventions = Set.copyOf(conventions);
  }

  Habits compression(Compression other) {
    return new Habits(capitals, apart, stress, other, conventions);
  }

  Habits typed(Convention... own) {
    return new Habits(capitals, apart, stress, compression, Set.of(own));
  }
}
