package io.github.readfall.languages.xliff;

/**
 * Where a place in a text goes when the text changes: with what stays the same at either end, and
 * in what changed to the word as far through it.
 *
 * @param before the text as it was
 * @param after as it is
 * @param head how many units at the start stay the same
 * @param tail how many at the end do
 */
record MovedPosition(String before, String after, int head, int tail) {

  static MovedPosition between(String before, String after) {
    int shorter = Math.min(before.length(), after.length());
    int head = 0;
    while (head < shorter && before.charAt(head) == after.charAt(head)) {
      head++;
    }
    int tail = 0;
    while (tail < shorter - head
        && before.charAt(before.length() - 1 - tail) == after.charAt(after.length() - 1 - tail)) {
      tail++;
    }
    return new MovedPosition(before, after, head, tail);
  }

  /** Where a place goes; of two places the one behind never goes before the other. */
  int to(int at) {
    if (at == before.length() && at > 0) {
      return after.length();
    }
    if (at <= head) {
      return at;
    }
    if (at >= before.length() - tail) {
      return after.length() - (before.length() - at);
    }
    int changed = before.length() - tail - head;
    int now = after.length() - tail - head;
    return wordEdge(head + (int) ((long) (at - head) * now / changed));
  }

  /** The nearest place in what changed that does not part a word. */
  private int wordEdge(int at) {
    int back = at;
    while (back > head && !isEdge(back)) {
      back--;
    }
    int on = at;
    while (on < after.length() - tail && !isEdge(on)) {
      on++;
    }
    return at - back < on - at ? back : on;
  }

  private boolean isEdge(int at) {
    return at == 0
        || at == after.length()
        || isGap(after.charAt(at - 1))
        || isGap(after.charAt(at));
  }

  private static boolean isGap(char c) {
    return c == ' ' || c == '\n';
  }
}
