package io.github.readfall.plan.order;

import io.github.readfall.base.geom.Box;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds panels inside other panels.
 *
 * @param frames for each panel the smallest that it is inside, or {@value #NONE}
 */
record Nesting(List<Integer> frames) {

  static final int NONE = -1;

  /** The nesting of some boxes; of equal ones the first is the frame. */
  static Nesting of(List<Box> boxes) {
    List<Integer> frames = new ArrayList<>(Collections.nCopies(boxes.size(), NONE));
    List<Integer> fromTheTop =
        IntStream.range(0, boxes.size())
            .boxed()
            .sorted(Comparator.comparingDouble((Integer i) -> boxes.get(i).y()))
            .toList();
    List<Integer> reaching = new ArrayList<>();
    for (int panel : fromTheTop) {
      Box box = boxes.get(panel);
      reaching.removeIf(other -> boxes.get(other).bottom() < box.y());
      for (int other : reaching) {
        relate(boxes, other, panel, frames);
      }
      reaching.add(panel);
    }
    return new Nesting(List.copyOf(frames));
  }

  private static void relate(List<Box> boxes, int a, int b, List<Integer> frames) {
    boolean aCovers = boxes.get(a).covers(boxes.get(b));
    boolean bCovers = boxes.get(b).covers(boxes.get(a));
    if (aCovers && !(bCovers && b < a)) {
      frame(boxes, a, b, frames);
    } else if (bCovers) {
      frame(boxes, b, a, frames);
    }
  }

  private static void frame(List<Box> boxes, int frame, int inset, List<Integer> frames) {
    int known = frames.get(inset);
    if (known == NONE || isTighter(boxes, frame, known)) {
      frames.set(inset, frame);
    }
  }

  /** Returns true if a frame is smaller than another, or as large but later in the script. */
  private static boolean isTighter(List<Box> boxes, int frame, int known) {
    int smaller = Double.compare(area(boxes.get(frame)), area(boxes.get(known)));
    return smaller < 0 || (smaller == 0 && frame > known);
  }

  private static double area(Box box) {
    return box.width() * box.height();
  }

  /** The outermost panel round a panel; itself if it is inside none. */
  int root(int panel) {
    int root = panel;
    while (frames.get(root) != NONE) {
      root = frames.get(root);
    }
    return root;
  }

  /** Returns true if one of two panels is inside the other. */
  boolean isNested(int a, int b) {
    return liesIn(a, b) || liesIn(b, a);
  }

  private boolean liesIn(int inset, int frame) {
    int at = inset;
    while (at != NONE && at != frame) {
      at = frames.get(at);
    }
    return at == frame;
  }

  /**
   * The panel, or the frame round it, that is beside the other's: it decides between two panels
   * neither of which is inside the other.
   */
  int beside(int panel, int other) {
    int at = panel;
    while (frames.get(at) != NONE && !liesIn(other, frames.get(at))) {
      at = frames.get(at);
    }
    return at;
  }
}
