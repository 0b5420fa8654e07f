package io.github.readfall.languages.xliff;

import io.github.readfall.languages.xliff.InlineText.Code;
import io.github.readfall.languages.xliff.InlineText.Written;
import io.github.readfall.languages.xml.XmlAttribute;
import io.github.readfall.languages.xml.XmlDocument;
import io.github.readfall.languages.xml.XmlElement;
import io.github.readfall.languages.xml.XmlNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads the content of a source or a target, code by code. */
final class InlineReader {

  private final XmlDocument document;
  private final StringBuilder plain = new StringBuilder();
  private final StringBuilder looks = new StringBuilder();
  private final List<Code> codes = new ArrayList<>();
  private final List<Written> signs = new ArrayList<>();

  /** Signs that were opened by a code of their own and are not closed yet, by its id. */
  private final Map<String, Sign> spanning = new HashMap<>();

  private final Set<String> closedHere = new HashSet<>();

  private InlineReader(XmlDocument document) {
    this.document = document;
  }

  /** The text of a source or a target. */
  static InlineText read(XmlDocument document, XmlElement content) {
    InlineReader reader = new InlineReader(document);
    content
        .elements(Names.CORE, "ec")
        .forEach(code -> code.attribute("startRef").ifPresent(reader.closedHere::add));
    reader.children(content, 0);
    return new InlineText(
        reader.plain.toString(), reader.looks.toString(), reader.codes, reader.signs);
  }

  private void children(XmlElement element, int look) {
    for (XmlNode child : element.children()) {
      if (child instanceof XmlNode.Chars chars) {
        chars.value().codePoints().forEach(c -> letter(c, look | spanningLook()));
      } else if (child instanceof XmlElement code) {
        code(code, look);
      } else {
        foreign(false, document.written(child));
      }
    }
  }

  private int spanningLook() {
    return spanning.values().stream().mapToInt(Sign::look).reduce(0, (a, b) -> a | b);
  }

  private void letter(int c, int look) {
    boolean space = c == ' ' || c == '\t' || c == '\n' || c == '\r';
    if (space && !plain.isEmpty() && plain.charAt(plain.length() - 1) == ' ') {
      return;
    }
    add(space ? ' ' : c, look);
  }

  private void add(int c, int look) {
    plain.appendCodePoint(c);
    looks.append(Character.toString((char) look).repeat(Character.charCount(c)));
  }

  private void code(XmlElement code, int look) {
    Optional<Sign> sign = code.namespace().equals(Names.CORE) ? Sign.of(code) : Optional.empty();
    switch (code.local()) {
      case "pc" -> sign.ifPresentOrElse(s -> pair(code, s, look), () -> foreignPair(code, look));
      case "ph" -> sign.ifPresentOrElse(s -> lineBreak(code, look), () -> foreign(code));
      case "sc" -> sign.ifPresentOrElse(s -> opening(code, s), () -> foreign(code));
      case "ec" -> closing(code);
      case "mrk" -> foreignPair(code, look);
      default -> foreign(code);
    }
  }

  private void pair(XmlElement code, Sign sign, int look) {
    signs.add(written(sign, code));
    children(code, look | sign.look());
  }

  private void lineBreak(XmlElement code, int look) {
    signs.add(written(Sign.BREAK, code));
    add('\n', look);
  }

  private void opening(XmlElement code, Sign sign) {
    String id = code.attribute("id").orElse("");
    if (closedHere.contains(id)) {
      signs.add(new Written(sign, id, sign.attributes()));
      spanning.put(id, sign);
    } else {
      foreign(code);
    }
  }

  private void closing(XmlElement code) {
    boolean ours = code.attribute("startRef").map(spanning::remove).isPresent();
    if (!ours) {
      foreign(code);
    }
  }

  private void foreignPair(XmlElement code, int look) {
    if (code.isEmptyTag()) {
      foreign(code);
      return;
    }
    foreign(true, document.text().substring(code.start(), code.startTagEnd()));
    children(code, look);
    foreign(true, document.text().substring(code.endTagStart(), code.end()));
  }

  private void foreign(XmlElement code) {
    foreign(false, document.written(code));
  }

  private void foreign(boolean pair, String text) {
    codes.add(new Code(plain.length(), pair, text));
  }

  private Written written(Sign sign, XmlElement code) {
    String attributes =
        code.attributes().stream()
            .filter(attribute -> !attribute.name().equals("id"))
            .map(this::asWritten)
            .collect(Collectors.joining());
    return new Written(sign, code.attribute("id").orElse(""), attributes);
  }

  private String asWritten(XmlAttribute attribute) {
    return " " + document.text().substring(attribute.start(), attribute.end());
  }
}
