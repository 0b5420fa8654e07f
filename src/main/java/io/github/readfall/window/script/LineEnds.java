package io.github.readfall.window.script;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The line ends of a file and its byte order mark, so that a text that was shown with plain line
 * feeds is saved as it was.
 *
 * @param byteOrderMark whether the file began with U+FEFF
 * @param lines as they were shown
 * @param ends of these lines, one each except for the last; none is empty
 */
public record LineEnds(boolean byteOrderMark, List<String> lines, List<String> ends) {

  private static final String MARK = "\uFEFF";

  public LineEnds {
    lines = List.copyOf(lines);
    ends = List.copyOf(ends);
  }

  /** The line ends of a file's text. */
  public static LineEnds of(String fileText) {
    boolean mark = fileText.startsWith(MARK);
    List<String> lines = new ArrayList<>();
    List<String> ends = new ArrayList<>();
    int start = mark ? 1 : 0;
    for (int i = start; i < fileText.length(); i++) {
      if (isEnd(fileText.charAt(i))) {
        int length = fileText.startsWith("\r\n", i) ? 2 : 1;
        lines.add(fileText.substring(start, i));
        ends.add(fileText.substring(i, i + length));
        i += length - 1;
        start = i + 1;
      }
    }
    lines.add(fileText.substring(start));
    return new LineEnds(mark, lines, ends);
  }

  /** A text with a line feed at each line end, and no byte order mark. */
  public static String withLineFeeds(String text) {
    return String.join("\n", of(text).lines());
  }

  /** The file's text with line feeds. */
  public String withLineFeeds() {
    return String.join("\n", lines);
  }

  /**
   * A text as it is to be saved: lines before and after the changed ones keep their ends, and those
   * between have the usual end of the file.
   *
   * @param shownText with line feeds
   */
  public String restored(String shownText) {
    String mark = byteOrderMark ? MARK : "";
    if (ends.stream().allMatch(usual()::equals)) {
      return mark + shownText.replace("\n", usual());
    }
    List<String> now = List.of(shownText.split("\n", -1));
    int most = Math.min(now.size(), lines.size()) - 1;
    int above = equalAbove(now, most);
    int below = equalBelow(now, most - above);
    StringBuilder text = new StringBuilder(mark);
    for (int i = 0; i < now.size() - 1; i++) {
      boolean isBelow = i >= now.size() - 1 - below;
      int old = isBelow ? i - now.size() + lines.size() : i;
      append(text, now.get(i), isBelow || i < above ? ends.get(old) : usual());
    }
    return text.append(now.get(now.size() - 1)).toString();
  }

  private int equalAbove(List<String> now, int most) {
    int equal = 0;
    while (equal < most && now.get(equal).equals(lines.get(equal))) {
      equal++;
    }
    return equal;
  }

  /** Counts from the last line that has an end. */
  private int equalBelow(List<String> now, int most) {
    int equal = 0;
    while (equal < most
        && now.get(now.size() - 2 - equal).equals(lines.get(lines.size() - 2 - equal))) {
      equal++;
    }
    return equal;
  }

  /**
   * Appends a line; never a line feed right after a lone carriage return: both would be one end.
   */
  private static void append(StringBuilder text, String line, String end) {
    boolean merges =
        line.isEmpty()
            && end.equals("\n")
            && text.length() > 0
            && text.charAt(text.length() - 1) == '\r';
    text.append(line).append(merges ? "\r" : end);
  }

  /** The end of most lines; the first of them if two are equally frequent. */
  private String usual() {
    Map<String, Long> counts =
        ends.stream().collect(Collectors.groupingBy(end -> end, Collectors.counting()));
    return counts.entrySet().stream()
        .max(
            Comparator.comparingLong((Map.Entry<String, Long> e) -> e.getValue())
                .thenComparing(e -> -ends.indexOf(e.getKey())))
        .map(Map.Entry::getKey)
        .orElse("\n");
  }

  private static boolean isEnd(char c) {
    return c == '\n' || c == '\r' || c == '\u0085' || c == '\u2028' || c == '\u2029';
  }
}
