package io.github.readfall.base.cache;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToLongFunction;

/**
 * Keeps the values that were used last, up to a number of bytes. When a new one makes it too large,
 * the least recently used are dropped; the newest always stays.
 *
 * <p>For example, with room for 10 bytes and values of 4: after {@code put a, put b, get a, put c}
 * it holds a and c.
 *
 * <p>Safe to share between threads.
 */
public final class ByteCache<K, V> {

  private static final int INITIAL_CAPACITY = 16;
  private static final float LOAD_FACTOR = 0.75f;

  private final Map<K, V> values = new LinkedHashMap<>(INITIAL_CAPACITY, LOAD_FACTOR, true);
  private final long maxBytes;
  private final ToLongFunction<V> size;

  /**
   * An empty cache.
   *
   * @param maxBytes most that all values together may take
   * @param size bytes that a value takes; the same whenever it is asked
   */
  public ByteCache(long maxBytes, ToLongFunction<V> size) {
    this.maxBytes = maxBytes;
    this.size = size;
  }

  /** The value of a key, which now counts as used; empty if it is not held. */
  public synchronized Optional<V> get(K key) {
    return Optional.ofNullable(values.get(key));
  }

  /** Takes a value in place of the key's former one. */
  public synchronized void put(K key, V value) {
    values.put(key, value);
    long bytes = bytes();
    for (Iterator<V> oldest = values.values().iterator(); bytes > maxBytes; oldest.remove()) {
      if (values.size() == 1) {
        return;
      }
      bytes -= size.applyAsLong(oldest.next());
    }
  }

  /** Bytes that all values take together. */
  public synchronized long bytes() {
    return values.values().stream().mapToLong(size).sum();
  }

  public synchronized void clear() {
    values.clear();
  }
}
