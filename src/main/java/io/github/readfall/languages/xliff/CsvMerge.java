package io.github.readfall.languages.xliff;

import io.github.readfall.languages.translate.CueAlignment;
import io.github.readfall.languages.translate.CueContext;
import io.github.readfall.languages.translate.Neighbours;
import io.github.readfall.languages.translate.State;
import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.languages.translate.TranslationTable;
import io.github.readfall.languages.translate.TranslationTable.Row;
import io.github.readfall.languages.xml.XmlDocument;
import io.github.readfall.languages.xml.XmlEdit;
import io.github.readfall.languages.xml.XmlElement;
import io.github.readfall.languages.xml.XmlEscapes;
import io.github.readfall.languages.xml.XmlFault;
import io.github.readfall.script.Cue;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.CueText;
import io.github.readfall.script.MarkupReader;
import io.github.readfall.script.Script;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Puts the rows of a table into a file of translations. */
public final class CsvMerge {

  /** Beginning of the ids of notes that keep columns of a table. */
  static final String COLUMN = "csv-";

  private final Matched into;
  private final XmlDocument document;
  private final TranslationTable table;
  private final List<XmlEdit> edits = new ArrayList<>();
  private final Set<String> ids = new HashSet<>();

  private CsvMerge(Matched into, TranslationTable table) {
    this.into = into;
    this.document = into.xliff().document();
    this.table = table;
    into.xliff().units().forEach(unit -> ids.add(unit.id()));
  }

  /**
   * The file with the content of the table.
   *
   * @param into every cue has a unit
   * @throws XmlFault if the file cannot be changed so
   */
  public static Matched of(Matched into, TranslationTable table) throws XmlFault {
    return new CsvMerge(into, table).merged();
  }

  /** Columns of tables that were taken in, for each cue by its id. */
  public static Map<String, Map<String, String>> columns(Matched matched) {
    Map<String, Map<String, String>> columns = new HashMap<>();
    matched
        .units()
        .forEach(
            (cue, unit) -> {
              Map<String, String> own = new LinkedHashMap<>();
              unit.notes().stream()
                  .filter(note -> note.id().startsWith(COLUMN))
                  .forEach(note -> own.put(note.category(), note.text()));
              columns.put(cue, own);
            });
    return columns;
  }

  private Matched merged() throws XmlFault {
    Script script = into.script();
    List<Row> rows = table.rows();
    Map<String, Integer> found =
        CueAlignment.of(
            rows.stream()
                .map(row -> new CueAlignment.Former(row.id(), row.speaker(), row.source()))
                .toList(),
            script);
    for (Cue cue : script.cues()) {
      Integer row = found.get(cue.id());
      if (row != null) {
        into.unit(cue).ifPresent(unit -> take(unit, rows.get(row)));
      }
    }
    Set<Integer> taken = new HashSet<>(found.values());
    for (int i = 0; i < rows.size(); i++) {
      if (!taken.contains(i) && !rows.get(i).target().isBlank() && !isKept(rows.get(i))) {
        append(rows.get(i));
      }
    }
    return Matched.of(XliffReader.read(document.with(edits)), script);
  }

  private void take(Unit unit, Row row) {
    TargetEdit edit = new TargetEdit(document, unit);
    CueText source = MarkupReader.text(row.source());
    boolean other = !Matched.isSame(source, MarkupReader.text(unit.source()));
    boolean changed = !row.target().isBlank() && !row.target().equals(unit.target());
    State state = row.state().orElse(changed ? State.TRANSLATED : unit.state());
    boolean approved = row.state().filter(word -> word != State.INITIAL).isPresent();
    if (other && (changed || approved)) {
      edits.addAll(edit.toSource(source));
    }
    if (!row.target().isBlank()) {
      edits.addAll(edit.to(row.target(), state));
    }
    columns(unit, row);
  }

  private void columns(Unit unit, Row row) {
    StringBuilder added = new StringBuilder();
    String name = unit.element().name();
    String prefix = name.substring(0, name.indexOf(':') + 1);
    int number = 0;
    for (Map.Entry<String, String> column : row.others().entrySet()) {
      number++;
      Optional<XmlElement> old = note(unit, column.getKey());
      if (old.isPresent()) {
        if (!old.get().words().strip().equals(column.getValue().strip())) {
          edits.add(XmlEdit.content(old.get(), XmlEscapes.text(column.getValue())));
        }
      } else if (!column.getValue().isBlank()) {
        added.append("<" + prefix + "note id=\"" + COLUMN + number + "\" category=\"");
        added.append(XmlEscapes.attribute(column.getKey())).append("\">");
        added.append(XmlEscapes.text(column.getValue())).append("</" + prefix + "note>");
      }
    }
    if (!added.isEmpty()) {
      insert(unit, prefix, added.toString());
    }
  }

  private void insert(Unit unit, String prefix, String notes) {
    Optional<XmlElement> there = unit.element().elements(Names.CORE, "notes").findFirst();
    if (there.isPresent()) {
      edits.add(XmlEdit.insert(there.get().endTagStart(), notes));
      return;
    }
    XmlElement first =
        unit.element()
            .elements()
            .filter(child -> child.namespace().equals(Names.CORE))
            .findFirst()
            .orElseThrow();
    String element = "<" + prefix + "notes>" + notes + "</" + prefix + "notes>";
    edits.add(XmlEdit.insert(first.start(), element));
  }

  private static Optional<XmlElement> note(Unit unit, String category) {
    return unit.element()
        .elements(Names.CORE, "notes")
        .flatMap(XmlElement::elements)
        .filter(note -> note.attribute("id").filter(id -> id.startsWith(COLUMN)).isPresent())
        .filter(note -> note.attribute("category").filter(category::equals).isPresent())
        .findFirst();
  }

  private boolean isKept(Row row) {
    return into.gone().stream()
        .anyMatch(
            unit ->
                Matched.isSame(MarkupReader.text(unit.source()), MarkupReader.text(row.source())));
  }

  /** Appends a row without a cue in the script as a unit of its own. */
  private void append(Row row) {
    List<XmlElement> files = into.xliff().files();
    XmlElement file = files.get(files.size() - 1);
    List<XmlElement> last = file.elements().toList();
    Cue cue =
        new Cue(
            row.id(),
            1,
            1,
            CueKind.DIALOGUE,
            List.of(row.speaker().orElse("")),
            List.of(),
            MarkupReader.text(row.source()),
            1,
            1);
    TranslatedCue said =
        new TranslatedCue(
            cue, row.target(), row.state().orElse(State.TRANSLATED), Optional.empty());
    OwnWords own =
        new OwnWords(
            cue,
            CueContext.NONE,
            new Neighbours(Optional.empty(), Optional.empty()),
            Optional.empty());
    UnitXml xml = new UnitXml(Prefixes.in(file.scope(), into.xliff().prefix()), "\n    ");
    edits.add(XmlEdit.insert(last.get(last.size() - 1).end(), xml.of(free(), said, own)));
  }

  private String free() {
    int number = 1;
    while (!ids.add("gone-" + number)) {
      number++;
    }
    return "gone-" + number;
  }
}
