package io.github.readfall.lettering.style;

import java.util.Optional;

/** What one table of series.toml says, key by key. */
interface Values {

  /** The value of a key; empty, and complained of, where it is of no use; empty where left out. */
  <T> Optional<T> get(Key<T> key);

  /**
   * Complains that values which are possible alone do not go together.
   *
   * @param sentence which, without a full stop
   */
  void clash(String sentence);

  /** The value of a key, or what stands in its place. */
  default <T> T or(Key<T> key, T builtIn) {
    return get(key).orElse(builtIn);
  }
}
