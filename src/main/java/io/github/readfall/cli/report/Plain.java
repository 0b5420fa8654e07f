package io.github.readfall.cli.report;

import io.github.readfall.type.text.DisplayCells;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Turns Markdown into plain text: emphasis, code and links become the words they mark, paragraphs
 * are separated by an empty line, and a code block is indented.
 */
final class Plain {

  private static final Pattern MARKED =
      Pattern.compile("`([^`]*)`|\\*\\*([^*]+)\\*\\*|\\*([^*]+)\\*|\\[([^\\]]+)\\]\\([^)]*\\)");
  private static final String FENCE = "```";
  private static final String INDENT = "    ";

  private Plain() {}

  /** A piece of text: a paragraph on one line, or a code block as it stands. */
  private record Block(boolean code, List<String> lines) {

    List<String> wrapped(int width) {
      return code
          ? lines.stream().map(line -> (INDENT + line).stripTrailing()).toList()
          : wrap(words(String.join(" ", lines)), width);
    }

    String whole() {
      return code ? String.join("\n", lines) : words(String.join(" ", lines));
    }
  }

  /** Lines of at most so many cells of a terminal; a longer word is on a line of its own. */
  static List<String> lines(String markdown, int width) {
    List<String> lines = new ArrayList<>();
    for (Block block : blocks(markdown)) {
      if (!lines.isEmpty()) {
        lines.add("");
      }
      lines.addAll(block.wrapped(width));
    }
    return lines;
  }

  /** The text with every paragraph on a line of its own. */
  static String text(String markdown) {
    return blocks(markdown).stream().map(Block::whole).collect(Collectors.joining("\n\n"));
  }

  /** A paragraph without its marks. */
  private static String words(String markdown) {
    return MARKED.matcher(markdown).replaceAll(mark -> marked(mark).replace("$", "\\$"));
  }

  private static String marked(MatchResult mark) {
    return IntStream.rangeClosed(1, mark.groupCount())
        .mapToObj(mark::group)
        .flatMap(Stream::ofNullable)
        .findFirst()
        .orElse("");
  }

  private static List<Block> blocks(String markdown) {
    List<Block> blocks = new ArrayList<>();
    List<String> block = new ArrayList<>();
    boolean code = false;
    for (String line : markdown.lines().toList()) {
      boolean fence = line.startsWith(FENCE);
      if (fence || (line.isBlank() && !code)) {
        end(block, code, blocks);
      } else {
        block.add(line);
      }
      code = fence != code;
    }
    end(block, code, blocks);
    return blocks;
  }

  private static void end(List<String> block, boolean code, List<Block> blocks) {
    if (!block.isEmpty()) {
      blocks.add(new Block(code, List.copyOf(block)));
      block.clear();
    }
  }

  private static List<String> wrap(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" +", -1)) {
      if (!line.isEmpty() && DisplayCells.of(line + " " + word) > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
