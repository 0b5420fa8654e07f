package io.github.readfall.type.text;

import java.util.Set;

/**
 * What a script or a language does with its letters.
 *
 * @param capitals whether it can be lettered in capitals
 * @param canBeSpaced whether its letters may be spaced apart; those that join or carry marks on
 *     both sides are not
 * @param stress how a word is made to stand out
 * @param compression which full-width marks give up their empty half
 * @param conventions what is typed otherwise than it is lettered
 */
public record ScriptTraits(
    boolean capitals,
    boolean canBeSpaced,
    Stress stress,
    Compression compression,
    Set<Convention> conventions) {

  static final ScriptTraits CASED =
      new ScriptTraits(true, true, Stress.LEAN, Compression.NONE, Set.of());
  static final ScriptTraits SQUARE =
      new ScriptTraits(false, true, Stress.WEIGHT, Compression.NONE, Set.of());
  static final ScriptTraits JOINED =
      new ScriptTraits(false, false, Stress.WEIGHT, Compression.NONE, Set.of());

  public ScriptTraits {
    conventions = Set.copyOf(conventions);
  }

  ScriptTraits compression(Compression other) {
    return new ScriptTraits(capitals, canBeSpaced, stress, other, conventions);
  }

  ScriptTraits typed(Convention... own) {
    return new ScriptTraits(capitals, canBeSpaced, stress, compression, Set.of(own));
  }
}
