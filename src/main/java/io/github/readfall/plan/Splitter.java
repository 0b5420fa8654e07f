package io.github.readfall.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Splits an episode that is too tall into parts, at a scene's end or between panels.
 *
 * <p>It takes a split with the fewest parts above the limit, and of those the cheapest: a part
 * costs the square of the difference of its height from an even share, in shares, and a split costs
 * {@link #cost} more the less of a pause there is. An exact optimum, found by dynamic programming;
 * of equals the one that splits higher up.
 */
final class Splitter {

  /**
   * The cost of a split within a scene: as much as two parts that are a good third below and above
   * their share. House default, no source.
   */
  private static final double WITHIN_SCENE = 0.25;

  /** The same within an exchange. House default, no source. */
  private static final double WITHIN_EXCHANGE = 0.35;

  private final List<Block> blocks;
  private final double limitPx;
  private final double endsPx;

  /**
   * A splitter of these blocks.
   *
   * @param blocks in script order, from the top
   * @param limitPx greatest height that a part should have
   * @param endsPx room of every part above its first and below its last panel
   */
  Splitter(List<Block> blocks, double limitPx, double endsPx) {
    this.blocks = List.copyOf(blocks);
    this.limitPx = limitPx;
    this.endsPx = endsPx;
  }

  /** The cost of a split at this pause. */
  static double cost(Block.Pause pause) {
    return switch (pause) {
      case SCENE -> 0;
      case PANEL -> WITHIN_SCENE;
      case EXCHANGE -> WITHIN_EXCHANGE;
    };
  }

  /** The height of the part from one block to another, both included. */
  double heightPx(int first, int last) {
    return blocks.get(last).bottomPx() - blocks.get(first).topPx() + endsPx;
  }

  /**
   * The best split into a number of parts.
   *
   * @return the index of each part's first block; empty if there are fewer blocks than parts
   */
  Optional<List<Integer>> into(int parts) {
    int n = blocks.size();
    if (parts < 1 || parts > n) {
      return Optional.empty();
    }
    double sharePx = heightPx(0, n - 1) / parts;
    Best[][] best = new Best[parts + 1][n + 1]; // [parts used][blocks used]
    best[0][0] = new Best(0, 0, 0);
    for (int part = 1; part <= parts; part++) {
      for (int end = part; end <= n - (parts - part); end++) {
        best[part][end] = last(best[part - 1], part, end, sharePx);
      }
    }
    List<Integer> starts = new ArrayList<>();
    for (int part = parts, end = n; part > 0; part--) {
      end = best[part][end].start();
      starts.add(end);
    }
    Collections.reverse(starts);
    return Optional.of(starts);
  }

  /** The best choice for the last of some parts that end at a block. */
  private Best last(Best[] before, int part, int end, double sharePx) {
    Optional<Best> best = Optional.empty();
    for (int start = part - 1; start < end && (part > 1 || start == 0); start++) {
      Best way = before[start].then(start, heightPx(start, end - 1), this, sharePx);
      if (best.isEmpty() || way.isBetterThan(best.get())) {
        best = Optional.of(way);
      }
    }
    return best.orElseThrow();
  }

  /**
   * The fewest parts none of which is above the limit, found by filling one after another; a block
   * above it alone counts as one.
   */
  int fewestParts() {
    int parts = 1;
    int first = 0;
    for (int last = 1; last < blocks.size(); last++) {
      if (heightPx(first, last) > limitPx) {
        parts++;
        first = last;
      }
    }
    return Math.max(2, Math.min(parts, Split.MOST_PARTS));
  }

  /**
   * A split of the blocks up to some place.
   *
   * @param tooTall number of parts above the limit
   * @param cost of the parts and splits
   * @param start first block of its last part
   */
  private record Best(int tooTall, double cost, int start) {

    Best then(int first, double heightPx, Splitter splitter, double sharePx) {
      double uneven = heightPx / sharePx - 1;
      double split = first == 0 ? 0 : Splitter.cost(splitter.blocks.get(first).before());
      int more = heightPx > splitter.limitPx ? 1 : 0;
      return new Best(tooTall + more, cost + uneven * uneven + split, first);
    }

    boolean isBetterThan(Best other) {
      return tooTall != other.tooTall ? tooTall < other.tooTall : cost < other.cost;
    }
  }
}
