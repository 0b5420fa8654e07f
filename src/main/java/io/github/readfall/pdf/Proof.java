package io.github.readfall.pdf;

import io.github.readfall.finding.Finding;
import io.github.readfall.galley.Galley;
import io.github.readfall.geom.Box;
import io.github.readfall.geom.XY;
import io.github.readfall.outbox.Halted;
import io.github.readfall.outbox.Work;
import io.github.readfall.text.TextLine;
import io.github.readfall.typeset.Labels;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/** Makes the proof of a strip: a cover, the strip page by page, and what has no place on it. */
final class Proof {

  private static final double HEAD = 26;
  private static final double FOOT = Paper.HEIGHT - 22;
  private static final double SMALL = 7;

  private final ProofStrip strip;
  private final Galley galley;
  private final Optional<ProofArt> art;
  private final Book book;
  private final Paper paper;
  private final Labels labels;
  private final Typist typist;
  private final StripScene scene;
  private final List<Segment> segments;
  private final ScriptSetter script;
  private final FindingSetter found;
  private final Bookmarks bookmarks;
  private final FlowPages flow;
  private final Overview overview;

  private Proof(ProofStrip strip, Optional<ProofArt> art, Book book) {
    this.strip = strip;
    this.galley = strip.galley();
    this.art = art;
    this.book = book;
    this.paper = Paper.of(galley);
    this.labels = new Labels(strip.shelf(), galley.style());
    this.typist = new Typist(labels);
    this.scene = StripScene.of(strip, labels);
    this.segments = Segment.of(galley, paper);
    this.script =
        new ScriptSetter(book.structure(), typist, galley, paper.columnPt(), scene.numbers());
    this.found =
        new FindingSetter(
            book.structure(), typist, Tongues.of(strip.script()), paper.columnPt());
    this.bookmarks = new Bookmarks(book.outline());
    this.flow = new FlowPages(book, paper.columnPt());
    this.overview = new Overview(galley.widthPx(), paper.segmentPx(), scene, labels);
  }

  /**
   * Writes the proof of a strip.
   *
   * @param art what it lies over, where there is any
   */
  static void write(ProofStrip strip, Optional<ProofArt> art, OutputStream out, Work work)
      throws IOException, Halted {
    try (Book book = new Book(strip.title(), strip.script().language(), id(strip))) {
      new Proof(strip, art, book).draw(work);
      book.writeTo(out);
    }
  }

  private static long id(ProofStrip strip) {
    CRC32 sum = new CRC32();
    sum.update(strip.script().text().getBytes(StandardCharsets.UTF_8));
    sum.update(strip.file().getBytes(StandardCharsets.UTF_8));
    return sum.getValue();
  }

  private void draw(Work work) throws IOException, Halted {
    Cover cover = new Cover(book, strip, typist);
    bookmarks.add("Figures", cover.sheet().page());
    Map<Integer, List<PanelPart>> parts = PanelPart.of(galley, segments);
    Map<Integer, List<Finding>> findings = placed();
    for (Segment segment : segments) {
      work.at(segment.index(), segments.size() + 1L);
      page(
          segment,
          parts.getOrDefault(segment.index(), List.of()),
          findings.getOrDefault(segment.index(), List.of()));
    }
    bookmarks.addPanels(strip.script());
    unplaced(parts.getOrDefault(-1, List.of()));
    cover.draw(paper, overview);
    furniture();
  }

  /** The findings of each segment, from the top. */
  private Map<Integer, List<Finding>> placed() {
    Map<Integer, List<Finding>> placed = new TreeMap<>();
    if (segments.isEmpty()) {
      return placed;
    }
    strip.findings().stream()
        .filter(finding -> finding.box().isPresent())
        .sorted(Comparator.comparingDouble(Proof::topPx))
        .forEach(
            finding ->
                placed
                    .computeIfAbsent(
                        Segment.at(topPx(finding), segments).index(), s -> new ArrayList<>())
                    .add(finding));
    return placed;
  }

  private static double topPx(Finding finding) {
    return finding.box().map(Box::y).orElse(0.0);
  }

  private void page(Segment segment, List<PanelPart> parts, List<Finding> findings)
      throws IOException {
    Sheet sheet = book.add();
    List<PageArt> pictures = new ArrayList<>();
    if (art.isPresent()) {
      pictures.addAll(
          art.get().between(segment.topPx(), segment.bottomPx(), book.document()));
    }
    List<PanelPiece> pieces =
        parts.stream().map(part -> script.set(part, y -> paper.yPt(y, segment))).toList();
    List<Entry> entries = pieces.stream().flatMap(PanelPiece::entries).toList();
    Column column = Column.of(entries, Paper.TOP, Paper.BOTTOM);
    StripPage page = new StripPage(strip, scene, paper, segment, pictures, sheet);
    page.ground();
    pieces.forEach(page::figure);
    page.behind();
    words(pieces, column, page, sheet);
    page.over();
    List<Entry> rest = new ArrayList<>(column.rest());
    rest.addAll(found(findings, segment, page, sheet));
    overview.add(segment, pictures, book.sheets().size(), ids(pieces));
    flow.add(rest);
  }

  private static List<String> ids(List<PanelPiece> pieces) {
    return pieces.stream()
        .flatMap(piece -> piece.cues().stream())
        .map(cue -> cue.cue().id())
        .toList();
  }

  /** Script and balloons, in the order of reading. */
  private void words(List<PanelPiece> pieces, Column column, StripPage page, Sheet sheet) {
    int next = 0;
    for (PanelPiece piece : pieces) {
      write(column, next, sheet);
      if (!piece.part().continued() && next < column.placed().size()) {
        bookmarks.note(
            piece.part().panel().number(),
            piece.part().heading(),
            sheet.page(),
            piece.entry().wantedPt());
      }
      next++;
      for (CuePiece cue : piece.cues()) {
        write(column, next, sheet);
        next++;
        page.balloon(cue);
      }
    }
  }

  private void write(Column column, int index, Sheet sheet) {
    if (index < column.placed().size()) {
      Column.Placed placed = column.placed().get(index);
      placed.entry().writeOn(sheet, new XY(paper.scriptX(), placed.topPt()));
    }
  }

  /** What was found on the page; what of it found no room there. */
  private List<Entry> found(List<Finding> findings, Segment segment, StripPage page, Sheet sheet)
      throws IOException {
    if (findings.isEmpty()) {
      return List.of();
    }
    PDStructureElement section = found.section();
    List<FoundNote> notes = new ArrayList<>();
    for (int i = 0; i < findings.size(); i++) {
      double y = paper.yPt(topPx(findings.get(i)), segment);
      notes.add(found.set(findings.get(i), section, y, found.letter(i, findings.get(i))));
    }
    Column column =
        Column.of(notes.stream().map(FoundNote::entry).toList(), Paper.TOP, Paper.BOTTOM);
    new FoundMarks(page, paper, sheet, book).draw(notes, column);
    column
        .placed()
        .forEach(one -> one.entry().writeOn(sheet, new XY(paper.findingsX(), one.topPt())));
    return column.rest();
  }

  /** What has no place on the strip: panels, then findings. */
  private void unplaced(List<PanelPart> parts) {
    Stream<Entry> panels =
        parts.stream().map(part -> script.set(part, y -> 0)).flatMap(PanelPiece::entries);
    List<Finding> others =
        strip.findings().stream()
            .filter(finding -> segments.isEmpty() || finding.box().isEmpty())
            .toList();
    int page = book.sheets().size();
    flow.add(panels.toList());
    if (!others.isEmpty()) {
      PDStructureElement section = found.section();
      flow.add(
          others.stream()
              .map(finding -> found.set(finding, section, 0, Key.NONE).entry())
              .toList());
    }
    if (book.sheets().size() > page) {
      bookmarks.add("Without a place", book.sheets().get(page).page());
    }
  }

  /** What stands at the head and foot of every page. */
  private void furniture() {
    List<Sheet> sheets = book.sheets();
    for (int i = 1; i < sheets.size(); i++) {
      String head = strip.title() + "  ·  " + strip.script().language();
      String foot = "page " + (i + 1) + " of " + sheets.size();
      Sheet sheet = sheets.get(i);
      sheet.decoration(
          () -> {
            left(sheet, head, HEAD);
            left(sheet, foot, FOOT);
          });
    }
  }

  private void left(Sheet sheet, String text, double y) {
    TextLine line = labels.line(text, SMALL, false);
    sheet.painter().text(line, new XY(Paper.SIDE, y), Hand.QUIET);
  }
}
