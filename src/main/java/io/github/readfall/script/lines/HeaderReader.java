package io.github.readfall.script.lines;

import io.github.readfall.base.finding.Spelling;
import io.github.readfall.script.Brackets;
import io.github.readfall.script.Cast;
import io.github.readfall.script.CommaList;
import io.github.readfall.script.Header;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Letters;
import io.github.readfall.script.LineKind;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Reads the headers at the top of a script, up to the first scene or panel. */
public final class HeaderReader {

  /** Keys that are understood. Author and Notes are kept and do nothing. */
  static final List<String> KEYS =
      List.of("Title", "Episode", "Language", "Cast", "Author", "Notes");

  private static final String CAST = "cast";

  /**
   * The top of a script.
   *
   * @param headers in order, a repeated one too
   * @param lines indexes of their lines, from 0
   * @param end index of the first scene or panel; the number of lines if there is none
   */
  public record Top(List<Header> headers, BitSet lines, int end) {

    /** The first value of a key; empty if there is none. */
    public String value(String key) {
      return headers.stream()
          .filter(header -> header.key().equalsIgnoreCase(key))
          .map(Header::value)
          .findFirst()
          .orElse("");
    }

    /** Everyone that any header Cast declares. */
    public Cast cast() {
      List<String> values =
          headers.stream()
              .filter(header -> header.key().equalsIgnoreCase(CAST))
              .map(Header::value)
              .toList();
      return Cast.of(String.join(",", values));
    }
  }

  /** A header that may still go on. */
  private record Draft(String key, StringBuilder value, int line) {

    Header header() {
      return new Header(key, value.toString(), line);
    }
  }

  private final Keywords keywords;
  private final FindingList findings;
  private final Set<String> keys = new HashSet<>();

  HeaderReader(Keywords keywords, FindingList findings) {
    this.keywords = keywords;
    this.findings = findings;
  }

  public Top read(List<RawLine> lines) {
    List<Draft> headers = new ArrayList<>();
    BitSet headerLines = new BitSet();
    int i = 0;
    for (; i < lines.size() && !isBlock(lines.get(i)); i++) {
      RawLine line = lines.get(i);
      if (line.isNote() || line.isBlank()) {
        continue;
      }
      if (goesOn(headers, headerLines, i)) {
        continueLast(headers, line);
        headerLines.set(i);
      } else if (isHeader(line)) {
        add(headers, line, i + 1);
        headerLines.set(i);
      }
    }
    return new Top(headers.stream().map(Draft::header).toList(), headerLines, i);
  }

  static boolean isKnownKey(String key) {
    return KEYS.stream().anyMatch(key::equalsIgnoreCase);
  }

  private boolean isBlock(RawLine line) {
    return BlockKeyword.kind(keywords, line) != LineKind.DESCRIPTION;
  }

  /** Returns true if a line continues a cast: the one before it ends with a comma. */
  private static boolean goesOn(List<Draft> headers, BitSet headerLines, int index) {
    if (index == 0 || !headerLines.get(index - 1)) {
      return false;
    }
    Draft last = headers.get(headers.size() - 1);
    StringBuilder value = last.value();
    return last.key().equalsIgnoreCase(CAST)
        && !value.isEmpty()
        && CommaList.isComma(value.charAt(value.length() - 1));
  }

  private static void continueLast(List<Draft> headers, RawLine line) {
    String more = line.text().substring(line.start(), Math.max(line.start(), line.end()));
    headers.get(headers.size() - 1).value().append(' ').append(more);
  }

  private static boolean isHeader(RawLine line) {
    int colon = colon(line);
    return colon >= 0 && isKnownKey(key(line, colon));
  }

  private void add(List<Draft> headers, RawLine line, int number) {
    int colon = colon(line);
    String key = key(line, colon);
    String value = line.text().substring(colon + 1, Math.max(colon + 1, line.end())).strip();
    if (!keys.add(key.toLowerCase(Locale.ROOT)) && !key.equalsIgnoreCase(CAST)) {
      findings.warning(
          "repeated-header",
          number,
          line.column(line.start()),
          "The header " + key + " is given twice; the first one counts.",
          "Delete one of the two.");
    }
    headers.add(new Draft(key, new StringBuilder(value), number));
  }

  public static int colon(RawLine line) {
    String text = line.text();
    int limit = Math.min(text.length(), line.start() + CueHeadReader.MAX_NAME);
    for (int i = line.start(); i < limit; i++) {
      if (Brackets.isColon(text.charAt(i))) {
        return i;
      }
    }
    return -1;
  }

  private static String key(RawLine line, int colon) {
    return Letters.collapse(line.text().substring(line.start(), colon));
  }

  /** The key that was probably meant. */
  public static String advice(String key) {
    return Spelling.nearestName(key, KEYS, Letters::fold)
        .map(known -> "Write \"" + known + ":\" if that is what is meant.")
        .orElse(
            "Known headers are " + String.join(", ", KEYS) + "; put // before a note to yourself.");
  }
}
