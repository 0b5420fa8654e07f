package io.github.readfall.languages.xliff;

import io.github.readfall.languages.translate.State;
import io.github.readfall.languages.xml.XmlElement;
import io.github.readfall.script.CueText;
import io.github.readfall.script.MarkupReader;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The unit of one cue in a file.
 *
 * @param element as written
 * @param id its id, unique in its file
 * @param parts in the order of their sources
 * @param notes in order
 * @param line on which it begins
 */
public record Unit(
    XmlElement element, String id, List<Part> parts, List<XliffNote> notes, int line) {

  public Unit {
    parts = List.copyOf(parts);
    notes = List.copyOf(notes);
  }

  /** The text of the first note of a category. */
  public Optional<String> note(String category) {
    return notes.stream()
        .filter(note -> note.category().equalsIgnoreCase(category))
        .map(XliffNote::text)
        .findFirst();
  }

  /** Its source, with the script's markup. */
  public String source() {
    return sourceText().raw();
  }

  /** The translation, with the script's markup; empty if there is none. */
  public String target() {
    return targetText().raw();
  }

  /** The translation as it is lettered. */
  CueText targetCue() {
    return MarkupReader.text(target());
  }

  /** Its state: that of the least advanced segment. */
  public State state() {
    return parts.stream()
        .filter(Part::isSegment)
        .map(part -> part.target().isEmpty() ? State.INITIAL : part.state())
        .min(Comparator.naturalOrder())
        .orElse(State.INITIAL);
  }

  /** Returns true if a segment has no translation. */
  public boolean isIncomplete() {
    return parts.stream().anyMatch(Part::lacksTarget);
  }

  /** Returns true if it is marked as translated from other words than it has now. */
  public boolean isMarkedStale() {
    return parts.stream()
        .filter(part -> part.state() == State.INITIAL)
        .map(part -> part.element().attribute("subState"))
        .anyMatch(subState -> subState.filter(Names.STALE::equals).isPresent());
  }

  /** Returns true if any target is written, even an empty one. */
  boolean hasTarget() {
    return parts.stream().anyMatch(part -> part.targetElement().isPresent());
  }

  InlineText sourceText() {
    return joined(parts.stream().map(Part::source));
  }

  InlineText targetText() {
    return isUntouched()
        ? InlineText.EMPTY
        : joined(inTargetOrder().flatMap(p -> p.said().stream()));
  }

  private boolean isUntouched() {
    return parts.stream().filter(Part::isSegment).allMatch(part -> part.target().isEmpty());
  }

  Stream<Part> inTargetOrder() {
    return parts.stream().sorted(Comparator.comparingInt(Part::place));
  }

  private static InlineText joined(Stream<InlineText> texts) {
    return texts.reduce(InlineText.EMPTY, InlineText::and);
  }

  /** Every id in it, its own left out. */
  Set<String> ids() {
    Set<String> ids = new HashSet<>();
    element.elements().forEach(child -> addIds(child, ids));
    return ids;
  }

  private static void addIds(XmlElement element, Set<String> ids) {
    element.attribute("id").ifPresent(ids::add);
    element.elements().forEach(child -> addIds(child, ids));
  }
}
