package io.github.readfall.type.text;

import java.util.Set;

/**
 * The traits of a script's or a language's letters.
 *
 * @param capitals true if it can be lettered in capitals
 * @param canBeSpaced true if its letters may be spaced apart; those that join or carry marks on
 *     both sides may not
 * @param stress the way a word is emphasised
 * @param compression the full-width marks that give up their empty half
 * @param conventions differences between typed and lettered text
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

  ScriptTraits stressed(Stress other) {
    return new ScriptTraits(capitals, canBeSpaced, other, compression, conventions);
  }

  ScriptTraits typed(Convention... own) {
    return new ScriptTraits(capitals, canBeSpaced, stress, compression, Set.of(own));
  }
}
