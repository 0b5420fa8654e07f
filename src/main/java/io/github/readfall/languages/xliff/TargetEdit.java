package io.github.readfall.languages.xliff;

import io.github.readfall.languages.translate.State;
import io.github.readfall.languages.xliff.InlineText.Code;
import io.github.readfall.languages.xliff.InlineText.Written;
import io.github.readfall.languages.xml.XmlDocument;
import io.github.readfall.languages.xml.XmlEdit;
import io.github.readfall.languages.xml.XmlElement;
import io.github.readfall.script.CueText;
import io.github.readfall.script.MarkupReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Changes a unit's translation. Codes without a sign in the script keep their place in the words,
 * segments keep their boundaries, and unchanged parts are not touched.
 */
final class TargetEdit {

  private final XmlDocument document;
  private final Unit unit;
  private final String prefix;

  TargetEdit(XmlDocument document, Unit unit) {
    this.document = document;
    this.unit = unit;
    String name = unit.element().name();
    this.prefix = name.substring(0, name.indexOf(':') + 1);
  }

  /** The changes that make a unit say this, with the script's markup, in a state. */
  List<XmlEdit> to(String raw, State state) {
    InlineText wanted = InlineText.of(MarkupReader.text(raw));
    List<XmlEdit> edits = new ArrayList<>();
    if (!wanted.says(InlineText.of(unit.targetCue()))) {
      edits.addAll(words(wanted));
    }
    unit.parts().stream().filter(Part::isSegment).forEach(part -> edits.addAll(state(part, state)));
    return edits;
  }

  /** A state, and no sub-state that belonged to another (XLIFF 2.1, 4.3.1.33). */
  List<XmlEdit> state(Part part, State state) {
    XmlElement segment = part.element();
    boolean same = part.state() == state;
    List<XmlEdit> edits = new ArrayList<>();
    if (!same) {
      edits.add(XmlEdit.attribute(segment, "state", state.word()));
    }
    boolean stale = segment.attribute("subState").filter(Names.STALE::equals).isPresent();
    if (!same || stale) {
      segment
          .written("subState")
          .ifPresent(subState -> edits.add(XmlEdit.without(document.text(), subState)));
    }
    return edits;
  }

  private List<XmlEdit> words(InlineText wanted) {
    List<Part> parts = unit.inTargetOrder().toList();
    List<InlineText> pieces = pieces(wanted, bases(parts));
    SignPool pool = new SignPool(signs(), unit.ids(), hasData());
    List<XmlEdit> edits = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      String content = InlineWriter.write(pieces.get(i), pool, prefix);
      edit(parts.get(i), content).ifPresent(edits::add);
    }
    return edits;
  }

  /** The changes that make a unit translate other words. */
  List<XmlEdit> toSource(CueText words) {
    List<Part> parts = unit.parts();
    List<InlineText> pieces =
        pieces(InlineText.of(words), parts.stream().map(Part::source).toList());
    List<Written> signs = parts.stream().flatMap(part -> part.source().signs().stream()).toList();
    SignPool pool = new SignPool(signs, unit.ids(), hasData());
    List<XmlEdit> edits = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      String content = InlineWriter.write(pieces.get(i), pool, prefix);
      edits.add(XmlEdit.content(parts.get(i).sourceElement(), content));
    }
    return edits;
  }

  /** A text divided where it was divided before, each piece with the codes that it had. */
  private static List<InlineText> pieces(InlineText wanted, List<InlineText> bases) {
    String before = bases.stream().map(InlineText::plain).collect(Collectors.joining());
    MovedPosition carried = MovedPosition.between(before, wanted.plain());
    List<InlineText> pieces = new ArrayList<>();
    int at = 0;
    for (int i = 0; i < bases.size(); i++) {
      int end = at + bases.get(i).plain().length();
      int from = i == 0 ? 0 : carried.to(at);
      int to = i == bases.size() - 1 ? wanted.plain().length() : carried.to(end);
      pieces.add(piece(wanted, from, to, bases.get(i).codes(), carried, at));
      at = end;
    }
    return pieces;
  }

  /** The text of each part, or the one it has to have if nothing is translated yet. */
  private List<InlineText> bases(List<Part> parts) {
    boolean begun = parts.stream().anyMatch(part -> part.isSegment() && part.target().isPresent());
    return parts.stream()
        .map(part -> begun ? part.said().orElse(InlineText.EMPTY) : part.source())
        .toList();
  }

  private static InlineText piece(
      InlineText whole, int from, int to, List<Code> codes, MovedPosition carried, int base) {
    List<Code> moved =
        codes.stream()
            .map(code -> code.at(Math.max(0, Math.min(to, carried.to(base + code.at())) - from)))
            .toList();
    return new InlineText(
        whole.plain().substring(from, to), whole.looks().substring(from, to), moved, List.of());
  }

  /** Codes for signs, those of the targets first. */
  private List<Written> signs() {
    List<Written> signs = new ArrayList<>();
    unit.parts().forEach(part -> part.target().ifPresent(text -> signs.addAll(text.signs())));
    unit.parts().forEach(part -> signs.addAll(part.source().signs()));
    return signs;
  }

  private boolean hasData() {
    Set<String> ids = unit.ids();
    return List.of(Sign.values()).stream().allMatch(sign -> ids.contains(sign.dataId()));
  }

  private Optional<XmlEdit> edit(Part part, String content) {
    if (part.targetElement().isPresent()) {
      return Optional.of(XmlEdit.content(part.targetElement().get(), content));
    }
    if (!part.isSegment() && content.equals(part.source().plain())) {
      return Optional.empty();
    }
    XmlElement source = part.sourceElement();
    String tag = prefix + "target";
    String target = "<" + tag + ">" + content + "</" + tag + ">";
    return Optional.of(XmlEdit.insert(source.end(), spaceBefore(source) + target));
  }

  private String spaceBefore(XmlElement element) {
    int start = element.start();
    while (start > 0 && Character.isWhitespace(document.text().charAt(start - 1))) {
      start--;
    }
    return document.text().substring(start, element.start());
  }
}
