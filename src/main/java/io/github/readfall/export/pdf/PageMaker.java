package io.github.readfall.export.pdf;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.XY;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/** Makes a page of the strip: its segment, the script beside it, and its findings. */
final class PageMaker {

  private final ProofStrip strip;
  private final ProofScene scene;
  private final Paper paper;
  private final Book book;
  private final TextSetter setter;
  private final ScriptSetter script;
  private final FindingSetter found;
  private final Bookmarks bookmarks;
  private final FlowPages flow;

  PageMaker(
      ProofStrip strip,
      ProofScene scene,
      Paper paper,
      Book book,
      TextSetter setter,
      Bookmarks marks) {
    this.strip = strip;
    this.scene = scene;
    this.paper = paper;
    this.book = book;
    this.setter = setter;
    this.script =
        new ScriptSetter(book.structure(), setter, strip.galley(), paper, scene.numbers());
    this.found =
        new FindingSetter(
            book.structure(), setter, ProofLanguages.of(strip.script()), paper.columnPt());
    this.bookmarks = marks;
    this.flow = new FlowPages(book, paper.columnPt());
  }

  /**
   * Makes the page of a segment, and those that go on where it is full.
   *
   * @param parts of the script on it
   * @param findings on it, from the top
   * @param art on it
   */
  void page(Segment segment, List<PanelPart> parts, List<Finding> findings, List<PageArt> art)
      throws IOException {
    Sheet sheet = book.add();
    int number = book.sheets().size();
    StripPage page = new StripPage(strip, scene, paper, segment, art, sheet);
    List<PanelPiece> pieces =
        parts.stream().map(part -> script.set(part, y -> paper.yPt(y, segment))).toList();
    List<FoundNote> notes = notes(findings, segment);
    Column cueColumn = column(pieces.stream().flatMap(PanelPiece::entries).toList());
    Column noteColumn = column(notes.stream().map(FoundNote::entry).toList());
    FoundMarks marks = new FoundMarks(page, paper, sheet, book);
    page.ground();
    pieces.forEach(page::figure);
    page.behind();
    page.strays(pieces);
    marks.leaders(notes);
    words(pieces, cueColumn, page, new Writer(sheet, scriptX(notes)));
    page.over();
    marks.draw(notes, noteColumn);
    Writer writer = new Writer(sheet, paper.findingsX());
    noteColumn.placed().forEach(writer::write);
    List<Entry> rest = new ArrayList<>(cueColumn.rest());
    rest.addAll(noteColumn.rest());
    flow.add(setter.aside("continued from page " + number), rest);
  }

  private static Column column(List<Entry> entries) {
    return Column.of(entries, Paper.TOP, Paper.BOTTOM);
  }

  /** The place of the script: beside the strip if nothing was found, else beside the findings. */
  private double scriptX(List<FoundNote> notes) {
    return notes.isEmpty() ? paper.besideStripX() : paper.scriptX();
  }

  /** Writes a column. */
  private record Writer(Sheet sheet, double xPt) {
    void write(Column.Placed placed) {
      placed.entry().writeOn(sheet, new XY(xPt, placed.topPt()));
    }

    void write(Column column, int index) {
      if (index < column.placed().size()) {
        write(column.placed().get(index));
      }
    }
  }

  /** Script and balloons, in the order of reading. */
  private void words(List<PanelPiece> pieces, Column column, StripPage page, Writer writer) {
    int next = 0;
    for (PanelPiece piece : pieces) {
      writer.write(column, next);
      next++;
      if (!piece.part().continued()) {
        bookmarks.note(piece, writer.sheet().page());
      }
      for (CuePiece cue : piece.cues()) {
        writer.write(column, next);
        next++;
        page.balloon(cue);
      }
    }
  }

  private List<FoundNote> notes(List<Finding> findings, Segment segment) {
    List<FoundNote> notes = new ArrayList<>();
    if (!findings.isEmpty()) {
      PDStructureElement section = found.section();
      for (Finding finding : findings) {
        double y = paper.yPt(FoundNote.topPx(finding), segment);
        notes.add(found.set(finding, section, y, found.letter(notes.size(), finding)));
      }
    }
    return notes;
  }

  /** Adds everything without a place on the strip: panels, then findings. */
  void unplaced(List<PanelPart> parts, List<Finding> findings) {
    flow.add(
        setter.aside("not on the strip yet"),
        parts.stream().map(part -> script.set(part, y -> 0)).flatMap(PanelPiece::entries).toList());
    if (!findings.isEmpty()) {
      PDStructureElement section = found.section();
      flow.add(
          setter.aside("found, without a place on the strip"),
          findings.stream()
              .map(finding -> found.set(finding, section, 0, FindingKey.NONE).entry())
              .toList());
    }
  }
}
