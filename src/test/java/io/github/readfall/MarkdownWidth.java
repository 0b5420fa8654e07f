package io.github.readfall;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Wraps the prose of a Markdown page at a width. Headings, tables, code and HTML keep their lines;
 * code spans are never broken.
 */
final class MarkdownWidth {

  private static final Pattern ITEM = Pattern.compile("( *(?:[-*+]|\\d+[.)]) +)(.*)");
  private static final Pattern WORD = Pattern.compile("(?:[^ `]|`[^`]*`)+|`");

  /** What would begin a list, a heading, a quotation, a table or HTML at the start of a line. */
  private static final Pattern BLOCK_START =
      Pattern.compile("[-*+]|#+|\\d+[.)]|[>|<].*|=+|-+|~+|```.*");

  private final int width;

  MarkdownWidth(int width) {
    this.width = width;
  }

  /** The page with every paragraph and list item filled up to the width. */
  String wrapped(String page) {
    List<String> out = new ArrayList<>();
    List<String> lines = page.lines().toList();
    int i = 0;
    boolean inList = false;
    while (i < lines.size()) {
      String line = lines.get(i);
      int end = i + 1;
      Matcher item = ITEM.matcher(line);
      if (line.startsWith("```")) {
        while (!lines.get(end).startsWith("```")) {
          end++;
        }
        end++;
        out.addAll(lines.subList(i, end));
        inList = false;
      } else if (line.startsWith("<")) {
        while (end < lines.size() && !lines.get(end).isBlank()) {
          end++;
        }
        out.addAll(lines.subList(i, end));
      } else if (item.matches() && (inList || !line.startsWith("    "))) {
        end = endOfProse(lines, end);
        String first = item.group(1);
        List<String> text = new ArrayList<>(lines.subList(i, end));
        text.set(0, item.group(2));
        out.addAll(filled(text, first, " ".repeat(first.length())));
        inList = true;
      } else if (line.isBlank()) {
        out.add("");
      } else if (line.startsWith("#") || line.startsWith("|") || line.startsWith("    ")) {
        out.add(line);
        inList = false;
      } else {
        end = endOfProse(lines, end);
        out.addAll(filled(lines.subList(i, end), "", ""));
        inList = false;
      }
      i = end;
    }
    return String.join("\n", out) + "\n";
  }

  private static int endOfProse(List<String> lines, int from) {
    int end = from;
    while (end < lines.size()
        && !lines.get(end).isBlank()
        && !lines.get(end).matches("(#|\\||```|<).*")
        && !ITEM.matcher(lines.get(end)).matches()) {
      end++;
    }
    return end;
  }

  private List<String> filled(List<String> text, String first, String indent) {
    List<String> out = new ArrayList<>();
    StringBuilder line = new StringBuilder(first);
    boolean empty = true;
    Matcher words = WORD.matcher(String.join(" ", text.stream().map(String::strip).toList()));
    while (words.find()) {
      String word = words.group();
      boolean fits =
          line.codePointCount(0, line.length()) + 1 + word.codePointCount(0, word.length())
              <= width;
      if (!empty && !fits && !BLOCK_START.matcher(word).matches()) {
        out.add(line.toString());
        line = new StringBuilder(indent);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    out.add(line.toString());
    return out;
  }
}
