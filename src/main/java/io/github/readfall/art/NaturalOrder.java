package io.github.readfall.art;

import java.util.Locale;

/** Compares file names as a person does: page2 before page10, in either case. */
final class NaturalOrder {

  private NaturalOrder() {}

  static int compare(String one, String other) {
    String a = one.toLowerCase(Locale.ROOT);
    String b = other.toLowerCase(Locale.ROOT);
    int i = 0;
    int j = 0;
    while (i < a.length() && j < b.length()) {
      int endI = numberEnd(a, i);
      int endJ = numberEnd(b, j);
      boolean numbers = endI > i && endJ > j;
      int order =
          numbers
              ? number(a.substring(i, endI), b.substring(j, endJ))
              : Character.compare(a.charAt(i), b.charAt(j));
      if (order != 0) {
        return order;
      }
      i = numbers ? endI : i + 1;
      j = numbers ? endJ : j + 1;
    }
    int left = Integer.compare(a.length() - i, b.length() - j);
    return left != 0 ? left : one.compareTo(other);
  }

  private static int numberEnd(String text, int from) {
    int end = from;
    while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
      end++;
    }
    return end;
  }

  /** Compares numbers of any length by value. */
  private static int number(String a, String b) {
    String one = a.replaceFirst("^0+(?=.)", "");
    String other = b.replaceFirst("^0+(?=.)", "");
    int byLength = Integer.compare(one.length(), other.length());
    return byLength != 0 ? byLength : one.compareTo(other);
  }
}
