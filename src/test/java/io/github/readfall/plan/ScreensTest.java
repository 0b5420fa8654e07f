package io.github.readfall.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.lettering.style.HouseStyle;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScreensTest {

  private static ReadWords words(double topPx, double bottomPx, int words) {
    return new ReadWords("p1-1", 1, topPx, bottomPx, words, words * 0.3);
  }

  @Test
  void theStripFillsThePhonesWidth() {
    assertEquals(640 * 1600 / 360.0, Screens.screenPx(HouseStyle.DEFAULT), 1e-9);
  }

  @Test
  void wordsCountWhereTheirMiddleComesIntoView() {
    Screens screens =
        Screens.of(2500, 1000, List.of(words(900, 1098, 3), words(900, 1102, 5), words(0, 10, 7)));
    assertEquals(List.of(10, 5, 0), screens.screens().stream().map(Screens.Screen::words).toList());
    assertEquals(1.5, screens.screens().get(1).seconds(), 1e-9);
    assertEquals(2.5, screens.count());
    assertEquals(2000, screens.screens().get(2).topPx());
  }

  @Test
  void aStripOfWholeScreensHasNoEmptyOneBelow() {
    assertEquals(2, Screens.of(2000, 1000, List.of(words(2000, 2000, 1))).screens().size());
  }

  @Test
  void aStretchIsAsLongAsItsLengthAndNoLonger() {
    List<ReadWords> met = List.of(words(0, 0, 80), words(2999, 2999, 80), words(3000, 3000, 80));
    List<ScrollStretch> found = ScrollStretch.over(150, 3000, met);
    assertEquals(1, found.size());
    assertEquals(160, found.get(0).words());
    assertEquals(met.subList(0, 2), found.get(0).met());
    assertEquals(List.of(), ScrollStretch.over(160, 3000, met));
  }

  /** Against counting every window that begins at some words. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void theWordiestStretchIsFoundAndStretchesShareNoWords(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<ReadWords> met =
        random.ints(30, 0, 20_000).mapToObj(y -> words(y, y + 100, random.nextInt(1, 26))).toList();
    int most =
        met.stream()
            .mapToInt(
                first ->
                    met.stream()
                        .filter(other -> other.middlePx() >= first.middlePx())
                        .filter(other -> other.middlePx() < first.middlePx() + 3000)
                        .mapToInt(ReadWords::words)
                        .sum())
            .max()
            .orElseThrow();
    List<ScrollStretch> found = ScrollStretch.over(40, 3000, met);
    assertEquals(most, found.stream().mapToInt(ScrollStretch::words).max().orElseThrow());
    List<ReadWords> all = found.stream().flatMap(stretch -> stretch.met().stream()).toList();
    IntStream.range(1, all.size())
        .forEach(
            i ->
                assertEquals(
                    1, Double.compare(all.get(i).middlePx() + 1, all.get(i - 1).middlePx())));
    assertEquals(all.size(), all.stream().distinct().count());
  }
}
