package io.github.readfall.art.panels;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Connected components, held against a flood fill as every textbook has it. */
class PieceSearchTest {

  private static final int COLUMNS = 37;
  private static final int ROWS = 29;

  @ParameterizedTest
  @ValueSource(doubles = {0.2, 0.4, 0.5, 0.6, 0.7, 0.9})
  void piecesAreWhatAFloodFillReaches(double share) {
    for (int seed = 0; seed < 30; seed++) {
      BitSet background = random(seed, share);
      CellGrid grid =
          new CellGrid(COLUMNS, ROWS, 1, new byte[3 * COLUMNS * ROWS], new byte[COLUMNS * ROWS]);
      List<Set<Integer>> pieces = new ArrayList<>();
      for (Piece piece : PieceSearch.of(grid, background, 1)) {
        BitSet cells = new BitSet();
        piece.addTo(cells, COLUMNS);
        TreeSet<Integer> sorted = new TreeSet<>();
        cells.stream().forEach(sorted::add);
        pieces.add(sorted);
      }
      assertEquals(flooded(background), pieces);
    }
  }

  private static BitSet random(int seed, double share) {
    SplittableRandom random = new SplittableRandom(seed);
    BitSet background = new BitSet();
    for (int i = 0; i < COLUMNS * ROWS; i++) {
      background.set(i, random.nextDouble() < share);
    }
    return background;
  }

  private static List<Set<Integer>> flooded(BitSet background) {
    BitSet seen = (BitSet) background.clone();
    List<Set<Integer>> all = new ArrayList<>();
    for (int first = 0; first < COLUMNS * ROWS; first++) {
      if (!seen.get(first)) {
        TreeSet<Integer> piece = new TreeSet<>();
        Deque<Integer> stack = new ArrayDeque<>(List.of(first));
        seen.set(first);
        while (!stack.isEmpty()) {
          int cell = stack.pop();
          piece.add(cell);
          for (int near : neighbours(cell)) {
            if (!seen.get(near)) {
              seen.set(near);
              stack.push(near);
            }
          }
        }
        all.add(piece);
      }
    }
    return all;
  }

  private static List<Integer> neighbours(int cell) {
    List<Integer> near = new ArrayList<>();
    for (int dy = -1; dy <= 1; dy++) {
      for (int dx = -1; dx <= 1; dx++) {
        int x = cell % COLUMNS + dx;
        int y = cell / COLUMNS + dy;
        if (x >= 0 && x < COLUMNS && y >= 0 && y < ROWS) {
          near.add(y * COLUMNS + x);
        }
      }
    }
    return near;
  }
}
