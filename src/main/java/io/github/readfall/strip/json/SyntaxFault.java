package io.github.readfall.strip.json;

import tools.jackson.core.JacksonException;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;

/**
 * The reason that a text is not JSON.
 *
 * @param offset where that shows, in UTF-16 units
 * @param message what is wrong
 * @param advice how to fix it
 */
record SyntaxFault(int offset, String message, String advice) {

  private static final String UNUSED = ", so the file cannot be used.";

  static SyntaxFault of(JacksonException e, String text) {
    TokenStreamLocation location = e.getLocation();
    long at = location == null ? 0 : location.getCharOffset();
    int offset = (int) Math.max(0, Math.min(at, text.length()));
    if (e instanceof StreamConstraintsException) {
      return new SyntaxFault(
          offset,
          "Something here is far longer or deeper than a layout ever is" + UNUSED,
          "Delete it, or restore an earlier version, e.g. layout.previous.json.");
    }
    if (e instanceof UnexpectedEndOfInputException) {
      return new SyntaxFault(
          text.length(),
          "The file breaks off before all brackets are closed" + UNUSED,
          "Close them, or restore an earlier version, e.g. layout.previous.json.");
    }
    return at(culprit(text, offset), text);
  }

  /** The offset of the character at fault: the parser is at it or just after it. */
  private static int culprit(String text, int offset) {
    int i = Math.min(offset, text.length() - 1);
    boolean behind = i > 0 && (offset == text.length() || isSpace(text.charAt(i)));
    return behind || isCloser(text, i - 1) ? i - 1 : i;
  }

  private static boolean isCloser(String text, int i) {
    return i > 0 && (text.charAt(i) == '}' || text.charAt(i) == ']') && before(text, i) == ',';
  }

  private static SyntaxFault at(int offset, String text) {
    return new SyntaxFault(
        offset, "This cannot be read as JSON" + UNUSED, advice(text.charAt(offset), offset, text));
  }

  private static String advice(char sign, int offset, String text) {
    if ((sign == '}' || sign == ']') && before(text, offset) == ',') {
      return "Take out the comma before the " + sign + ".";
    }
    if (sign == '/' || sign == '#') {
      return "JSON has no notes: take it out.";
    }
    if (sign == '\'') {
      return "Put texts and keys in double quotes.";
    }
    char before = before(text, offset);
    boolean begins = sign == '"' || sign == '{' || sign == '[';
    if (begins && before != ':' && before != ',' && before != '{' && before != '[') {
      return "Put a comma before it.";
    }
    return "Look for a comma, quote or bracket too many or too few just before it.";
  }

  /** The last character before an offset that is not white space; a space if there is none. */
  private static char before(String text, int offset) {
    int i = offset - 1;
    while (i >= 0 && isSpace(text.charAt(i))) {
      i--;
    }
    return i < 0 ? ' ' : text.charAt(i);
  }

  private static boolean isSpace(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r';
  }

  void addTo(LayoutFindings faults) {
    faults.error("syntax", offset, message, advice);
  }
}
