package io.github.readfall.languages.reference;

import java.util.ArrayList;
import java.util.List;

/**
 * Numbers that look random and are the same every time: FNV-1a (64 bits, over UTF-16 units) of the
 * text they are drawn for, mixed as in SplitMix64 (Steele, Lea and Flood, 2014).
 */
final class Scramble {

  private static final long FNV_OFFSET = 0xcbf29ce484222325L;
  private static final long FNV_PRIME = 0x100000001b3L;
  private static final long GOLDEN = 0x9e3779b97f4a7c15L;
  private static final double UNIT = 0x1.0p-53;

  private final long seed;

  private Scramble(long seed) {
    this.seed = seed;
  }

  static Scramble of(String what) {
    long hash = FNV_OFFSET;
    for (int i = 0; i < what.length(); i++) {
      hash = (hash ^ what.charAt(i)) * FNV_PRIME;
    }
    return new Scramble(hash);
  }

  /** Another one, for the part of this number. */
  Scramble part(int number) {
    return new Scramble(bits(-1L - number));
  }

  private long bits(long draw) {
    long z = seed + (draw + 1) * GOLDEN;
    z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
    z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
    return z ^ (z >>> 31);
  }

  /** The number of this draw, from 0 to just below 1. */
  double share(int draw) {
    return (bits(draw) >>> 11) * UNIT;
  }

  /** The same elements in another order. */
  <T> List<T> order(List<T> items) {
    List<T> mixed = new ArrayList<>(items);
    for (int i = mixed.size() - 1; i > 0; i--) {
      int other = (int) (share(i) * (i + 1));
      T kept = mixed.get(i);
      mixed.set(i, mixed.get(other));
      mixed.set(other, kept);
    }
    return mixed;
  }
}
