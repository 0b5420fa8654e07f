package io.github.readfall.base.cache;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class ByteCacheTest {

  private final ByteCache<Character, String> cache = new ByteCache<>(10, String::length);

  private String held() {
    StringBuilder held = new StringBuilder();
    for (char key = 'a'; key <= 'z'; key++) {
      cache.get(key).ifPresent(held::append);
    }
    return held.toString();
  }

  @Test
  void theLeastRecentlyUsedGoesFirst() {
    cache.put('a', "aaaa");
    cache.put('b', "bbbb");
    assertEquals(Optional.of("aaaa"), cache.get('a'));
    cache.put('c', "cccc");
    assertEquals("aaaacccc", held());
    assertEquals(8, cache.bytes());
  }

  @Test
  void asManyGoAsTheNewOneNeeds() {
    for (char key = 'a'; key <= 'j'; key++) {
      cache.put(key, String.valueOf(key));
    }
    cache.put('z', "zzzzzzz");
    assertEquals("hijzzzzzzz", held());
  }

  @Test
  void theNewestStaysHoweverLargeItIs() {
    cache.put('a', "a");
    cache.put('b', "b".repeat(20));
    assertEquals("b".repeat(20), held());
    cache.put('c', "c");
    assertEquals("c", held());
  }

  @Test
  void aNewValueTakesThePlaceOfTheFormer() {
    cache.put('a', "aaaaaaaa");
    cache.put('a', "aa");
    assertEquals(2, cache.bytes());
    cache.clear();
    assertEquals(0, cache.bytes());
    assertEquals(Optional.empty(), cache.get('a'));
  }
}
