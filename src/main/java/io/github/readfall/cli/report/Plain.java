package io.github.readfall.cli.report;

import io.github.readfall.base.OneCall;
import io.github.readfall.type.text.DisplayCells;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;

/**
 * Turns Markdown into plain text: emphasis, code and links become the words they mark, paragraphs
 * are separated by an empty line, and a code block is indented.
 */
final class Plain {

  private static final String INDENT = "    ";

  private Plain() {}

  /** A piece of text without its marks: a paragraph on one line, or a code block as it is. */
  private record Block(boolean code, String text) {

    List<String> wrapped(int width) {
      return code
          ? text.lines().map(line -> (INDENT + line).stripTrailing()).toList()
          : wrap(text, width);
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
    return blocks(markdown).stream().map(Block::text).collect(Collectors.joining("\n\n"));
  }

  private static List<Block> blocks(String markdown) {
    Blocks blocks = new Blocks();
    Parser.builder().build().parse(markdown).accept(blocks);
    return blocks.found;
  }

  /** Gathers the blocks of a page. */
  @OneCall
  private static final class Blocks extends AbstractVisitor {

    private final List<Block> found = new ArrayList<>();
    private final StringBuilder words = new StringBuilder();

    @Override
    public void visit(FencedCodeBlock code) {
      found.add(new Block(true, code.getLiteral().stripTrailing()));
    }

    @Override
    public void visit(Paragraph paragraph) {
      visitChildren(paragraph);
      found.add(new Block(false, words.toString()));
      words.setLength(0);
    }

    @Override
    public void visit(Text text) {
      words.append(text.getLiteral());
    }

    @Override
    public void visit(Code code) {
      words.append(code.getLiteral());
    }

    @Override
    public void visit(SoftLineBreak end) {
      words.append(' ');
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
