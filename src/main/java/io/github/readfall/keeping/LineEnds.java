package io.github.readfall.keeping;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What an editor does not show of a text on disk: its byte order mark, and whether a line ends in
 * LF, CR LF or CR. Lines that were not touched keep their ends; new ones get the end that most
 * have. Example: {@code "a\r\nb\nc\r\n"} is edited as {@code "a\nb\nc\n"}; with {@code x} put
 * before {@code b} it is saved as {@code "a\r\nx\r\nb\nc\r\n"}.
 */
public final class LineEnds {

  private static final Pattern END = Pattern.compile("\r\n|\r|\n");
  private static final String MARK = "\uFEFF";

  private final boolean marked;
  private final List<String> lines;
  private final List<String> ends;
  private final String usual;

  private LineEnds(boolean marked, List<String> lines, List<String> ends) {
    this.marked = marked;
    this.lines = lines;
    this.ends = ends;
    this.usual = usual(ends);
  }

  /** Those of a text as it is on disk. */
  public static LineEnds of(String onDisk) {
    boolean marked = onDisk.startsWith(MARK);
    List<String> lines = new ArrayList<>();
    List<String> ends = new ArrayList<>();
    int from = marked ? 1 : 0;
    for (Matcher end = END.matcher(onDisk); end.find(); from = end.end()) {
      lines.add(onDisk.substring(from, end.start()));
      ends.add(end.group());
    }
    lines.add(onDisk.substring(from));
    return new LineEnds(marked, lines, ends);
  }

  /** The most frequent one; LF where there is none. */
  private static String usual(List<String> ends) {
    return List.of("\n", "\r\n", "\r").stream()
        .max((a, b) -> Collections.frequency(ends, a) - Collections.frequency(ends, b))
        .filter(end -> !ends.isEmpty())
        .orElse("\n");
  }

  /** The text for an editor: without a mark, every line end LF. */
  public String edited() {
    return String.join("\n", lines);
  }

  /**
   * The text for the disk.
   *
   * @param edited as an editor has it
   */
  public String restored(String edited) {
    String mark = marked ? MARK : "";
    if (ends.stream().allMatch(usual::equals)) {
      return mark + (usual.equals("\n") ? edited : edited.replace("\n", usual));
    }
    return mark + mixed(List.of(edited.split("\n", -1)));
  }

  private String mixed(List<String> now) {
    int most = Math.min(lines.size(), now.size());
    int head = 0;
    while (head < most && lines.get(head).equals(now.get(head))) {
      head++;
    }
    int tail = 0;
    while (tail < most - head
        && lines.get(lines.size() - 1 - tail).equals(now.get(now.size() - 1 - tail))) {
      tail++;
    }
    StringBuilder text = new StringBuilder(now.get(0));
    for (int line = 1; line < now.size(); line++) {
      int end = line - 1; // the end in front of this line
      boolean inTail = end >= now.size() - tail;
      String kept = end < Math.min(head, ends.size()) ? ends.get(end) : usual;
      append(text, inTail ? ends.get(end - now.size() + lines.size()) : kept);
      text.append(now.get(line));
    }
    return text.toString();
  }

  /** CR, an empty line, and LF would be read as one end: CR LF. */
  private static void append(StringBuilder text, String end) {
    boolean merges = end.equals("\n") && !text.isEmpty() && text.charAt(text.length() - 1) == '\r';
    text.append(merges ? "\r" : end);
  }
}
