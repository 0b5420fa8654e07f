package io.github.readfall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Checks that the prose of every page is wrapped at one width; with {@code -Dgolden=accept} it
 * rewraps the pages instead.
 */
class MarkdownWidthTest {

  private static final boolean ACCEPT = "accept".equals(System.getProperty("golden"));
  private static final int AT_LEAST = 50;
  private static final MarkdownWidth FORMAT = new MarkdownWidth(120);

  @TestFactory
  List<DynamicTest> everyPageIsWrapped() throws IOException {
    List<Path> pages = pages();
    assertTrue(pages.size() > AT_LEAST, "only " + pages.size() + " pages were found");
    return pages.stream().map(page -> dynamicTest(page.toString(), () -> check(page))).toList();
  }

  private static void check(Path page) throws IOException {
    String text = Files.readString(page);
    String wrapped = FORMAT.wrapped(text);
    if (ACCEPT) {
      Files.writeString(page, wrapped);
    } else {
      assertEquals(wrapped, text, "wrap it with -Dtest=MarkdownWidthTest -Dgolden=accept");
    }
  }

  private static List<Path> pages() throws IOException {
    Stream<String> single =
        Stream.of("README.md", "DEVELOPERS.md", "fonts-open/README.md", "sample-scripts/README.md");
    try (Stream<Path> docs = Files.walk(Path.of("docs"))) {
      return Stream.concat(
              single.map(Path::of), docs.filter(file -> file.toString().endsWith(".md")).sorted())
          .toList();
    }
  }

  @Test
  void proseIsFilledUpToTheWidth() {
    assertEquals("one two\nthree\n", new MarkdownWidth(8).wrapped("one\ntwo three\n"));
  }

  @Test
  void listItemsKeepTheirIndent() {
    assertEquals(
        "- one two\n  three\n1. four\n",
        new MarkdownWidth(9).wrapped("- one two three\n1. four\n"));
  }

  @Test
  void tablesHeadingsAndCodeKeepTheirLines() {
    String page =
        "# One two three\n\n| one two three |\n\n    one two three\n\n```\none two three\n```\n";
    assertEquals(page, new MarkdownWidth(8).wrapped(page));
  }

  @Test
  void codeSpansAreNotBroken() {
    assertEquals(
        "say\n`one two three`,\nno\n", new MarkdownWidth(8).wrapped("say `one two three`, no\n"));
  }

  @Test
  void noLineBeginsWithTheSignOfAList() {
    assertEquals("eight is 4 +\n4\n", new MarkdownWidth(10).wrapped("eight is 4 + 4\n"));
  }

  @Test
  void wrappingAgainChangesNothing() throws IOException {
    for (Path page : pages()) {
      String once = FORMAT.wrapped(Files.readString(page));
      assertEquals(once, FORMAT.wrapped(once), page.toString());
    }
  }
}
