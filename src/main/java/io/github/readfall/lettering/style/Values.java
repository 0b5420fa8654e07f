package io.github.readfall.lettering.style;

import java.util.Optional;

/** The values of one table of series.toml, key by key. */
interface Values {

  /**
   * The value of a key; empty if it is left out, or if it cannot be used, which is then reported.
   */
  <T> Optional<T> get(Key<T> key);

  /**
   * Complains that values which are possible alone do not go together.
   *
   * @param sentence which, without a full stop
   */
  void clash(String sentence);

  /** The value of a key, or the built-in one. */
  default <T> T or(Key<T> key, T builtIn) {
    return get(key).orElse(builtIn);
  }
}
