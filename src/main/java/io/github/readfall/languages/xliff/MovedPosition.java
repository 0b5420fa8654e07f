package io.github.readfall.languages.xliff;

/**
 * Maps places of a text to the text after a change: exactly where both ends are unchanged, and in
 * the changed part to the word as far through it.
 *
 * @param before the text as it was
 * @param after as it is
 * @param head number of units at the start that are unchanged
 * @param tail number of units at the end that are unchanged
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

  /** The new position of a place; the order of two places is kept. */
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

  /** The nearest place in the changed part that does not divide a word. */
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
