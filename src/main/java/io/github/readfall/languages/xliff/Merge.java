package io.github.readfall.languages.xliff;

import io.github.readfall.languages.translate.CueContext;
import io.github.readfall.languages.translate.Neighbours;
import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.languages.xml.XmlEdit;
import io.github.readfall.languages.xml.XmlElement;
import io.github.readfall.languages.xml.XmlFault;
import io.github.readfall.script.Cue;
import io.github.readfall.script.Letters;
import io.github.readfall.script.MarkupReader;
import io.github.readfall.script.Script;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Completes a file: every cue of the script gets a unit, and nothing that was kept before is lost.
 * The present content of the file stays as it is written.
 */
public final class Merge {

  private final Matched into;
  private final Optional<Matched> kept;
  private final Map<String, CueContext> contexts;
  private final XmlElement file;
  private final Set<String> ids = new HashSet<>();
  private final List<XmlEdit> edits = new ArrayList<>();

  private Merge(Matched into, Optional<Matched> kept, Map<String, CueContext> contexts) {
    this.into = into;
    this.kept = kept;
    this.contexts = contexts;
    List<XmlElement> files = into.xliff().files();
    this.file = files.get(files.size() - 1);
    into.xliff().units().forEach(unit -> ids.add(unit.id()));
  }

  /**
   * A file with everything that was kept before and is missing from it.
   *
   * @param kept earlier file for the language, if any
   * @param contexts of the cues, by their ids
   * @throws XmlFault if the two cannot be put together
   */
  public static Matched of(Matched into, Optional<Matched> kept, Map<String, CueContext> contexts)
      throws XmlFault {
    return new Merge(into, kept, contexts).merged();
  }

  private Matched merged() throws XmlFault {
    Script script = into.script();
    List<Cue> cues = script.cues();
    for (int i = 0; i < cues.size(); i++) {
      Optional<Unit> there = into.unit(cues.get(i));
      if (there.isPresent()) {
        keepTarget(cues.get(i), there.get());
      } else {
        insert(place(cues, i), cues.get(i));
      }
    }
    kept.ifPresent(former -> former.gone().stream().filter(this::isNew).forEach(this::append));
    return edits.isEmpty()
        ? into
        : Matched.of(XliffReader.read(into.xliff().document().with(edits)), script);
  }

  /**
   * Keeps the earlier target of a cue whose target the file leaves out; a new one is no longer
   * stale.
   */
  private void keepTarget(Cue cue, Unit unit) {
    Optional<Unit> before = kept.flatMap(former -> former.unit(cue));
    if (before.isEmpty()) {
      return;
    }
    String old = before.get().target();
    TargetEdit edit = new TargetEdit(into.xliff().document(), unit);
    if (unit.target().isBlank() && !old.isBlank()) {
      edits.addAll(edit.to(old, before.get().state()));
    } else if (unit.isMarkedStale() && !old.equals(unit.target())) {
      edits.addAll(edit.to(unit.target(), unit.state()));
    }
  }

  private void insert(int at, Cue cue) {
    Optional<Unit> before = kept.flatMap(former -> former.unit(cue));
    edits.add(XmlEdit.insert(at, before.isPresent() ? copied(before.get()) : written(cue)));
  }

  private void append(Unit gone) {
    edits.add(XmlEdit.insert(endOfFile(), copied(gone)));
  }

  /** Behind the nearest cue before that has a unit, else before the first unit of all. */
  private int place(List<Cue> cues, int index) {
    for (int i = index - 1; i >= 0; i--) {
      Optional<Unit> unit = into.unit(cues.get(i));
      if (unit.isPresent()) {
        return unit.get().element().end();
      }
    }
    return into.xliff().units().stream()
        .findFirst()
        .map(unit -> unit.element().start() - space(unit.element().start()).length())
        .orElseGet(this::endOfFile);
  }

  private int endOfFile() {
    List<XmlElement> last = file.elements().toList();
    return last.get(last.size() - 1).end();
  }

  private String written(Cue cue) {
    Prefixes prefixes = Prefixes.in(file.scope(), into.xliff().prefix());
    OwnWords own =
        new OwnWords(
            cue,
            contexts.getOrDefault(cue.id(), CueContext.NONE),
            Neighbours.of(cue, into.script()),
            Optional.empty());
    return new UnitXml(prefixes, space()).of(free(cue.id()), TranslatedCue.untranslated(cue), own);
  }

  /** A unit of another file, with the prefixes that it means. */
  private String copied(Unit unit) {
    XmlElement element = unit.element();
    Matched former = kept.orElseThrow();
    String text = former.xliff().document().written(element);
    int nameEnd = 1 + element.name().length();
    int idStart = element.written("id").orElseThrow().start() - element.start();
    int idEnd = element.written("id").orElseThrow().end() - element.start();
    return space()
        + text.substring(0, nameEnd)
        + declarations(element, text)
        + text.substring(nameEnd, idStart)
        + ("id=\"" + free(unit.id()) + "\"")
        + text.substring(idEnd);
  }

  private String declarations(XmlElement element, String text) {
    StringBuilder declared = new StringBuilder();
    element.scope().entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .filter(each -> !each.getValue().equals(file.scope().get(each.getKey())))
        .filter(each -> each.getKey().isEmpty() || text.contains(each.getKey() + ":"))
        .forEach(
            each -> {
              String name = each.getKey().isEmpty() ? "xmlns" : "xmlns:" + each.getKey();
              if (element.written(name).isEmpty()) {
                declared.append(" ").append(name).append("=\"").append(each.getValue()).append('"');
              }
            });
    return declared.toString();
  }

  private String free(String id) {
    String free = id;
    for (int number = 2; !ids.add(free); number++) {
      free = id + "." + number;
    }
    return free;
  }

  private boolean isNew(Unit gone) {
    String words = words(gone);
    return into.gone().stream().noneMatch(unit -> words(unit).equals(words))
        && into.units().values().stream().noneMatch(unit -> words(unit).equals(words));
  }

  private static String words(Unit unit) {
    return Letters.fold(MarkupReader.text(unit.source()).plain());
  }

  /** The line end and the spaces before a unit of the file. */
  private String space() {
    return into.xliff().units().stream()
        .findFirst()
        .map(unit -> space(unit.element().start()))
        .filter(space -> !space.isEmpty())
        .orElse("\n    ");
  }

  private String space(int at) {
    String text = into.xliff().document().text();
    int start = at;
    while (start > 0 && Character.isWhitespace(text.charAt(start - 1))) {
      start--;
    }
    return text.substring(start, at);
  }
}
