package io.github.readfall.export.pdf;

import io.github.readfall.base.files.Cancelled;
import io.github.readfall.base.files.Progress;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.XY;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.script.Cue;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.type.text.TextLine;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.zip.CRC32;

/**
 * Makes the proof of a strip: a cover, the strip page by page, and everything without a place on
 * it.
 */
final class Proof {

  private static final double HEAD = 26;
  private static final double FOOT = Paper.HEIGHT - 22;
  private static final double SMALL = 7;
  private static final String CARRIER = "x";

  private final ProofStrip strip;
  private final Galley galley;
  private final Optional<ProofArt> art;
  private final Book book;
  private final Paper paper;
  private final Labels labels;
  private final TextSetter setter;
  private final ProofScene scene;
  private final List<Segment> segments;
  private final Bookmarks bookmarks;
  private final PageMaker pages;

  private Proof(ProofStrip strip, Optional<ProofArt> art, Book book, Labels labels) {
    this.strip = strip;
    this.galley = strip.galley();
    this.art = art;
    this.book = book;
    this.paper = Paper.of(galley);
    this.labels = labels;
    this.setter = new TextSetter(labels);
    this.scene = ProofScene.of(strip, labels);
    this.segments = Segment.of(galley, paper);
    this.bookmarks = new Bookmarks(book.outline());
    this.pages = new PageMaker(strip, scene, paper, book, setter, bookmarks);
  }

  /**
   * Writes the proof of a strip.
   *
   * @param art under it, if there is any
   */
  static void write(ProofStrip strip, Optional<ProofArt> art, OutputStream out, Progress work)
      throws IOException, Cancelled {
    Labels labels = new Labels(strip.shelf(), strip.galley().style());
    TextLine carrier = labels.line(CARRIER, SMALL, false);
    try (Book book = new Book(strip.title(), strip.script().language(), id(strip), carrier)) {
      new Proof(strip, art, book, labels).draw(work);
      book.writeTo(out);
    }
  }

  private static long id(ProofStrip strip) {
    CRC32 sum = new CRC32();
    sum.update(strip.script().text().getBytes(StandardCharsets.UTF_8));
    sum.update(strip.file().getBytes(StandardCharsets.UTF_8));
    return sum.getValue();
  }

  private void draw(Progress work) throws IOException, Cancelled {
    Cover cover = new Cover(book, strip, setter);
    OverviewPages overview = new OverviewPages(galley.widthPx(), paper.segmentPx(), scene, labels);
    bookmarks.add("Figures", cover.sheet().page());
    Map<Integer, List<PanelPart>> parts = PanelPart.of(galley, segments);
    Map<Integer, List<Finding>> findings = placed();
    for (Segment segment : segments) {
      work.at(segment.index(), segments.size() + 1L);
      List<PanelPart> own = parts.getOrDefault(segment.index(), List.of());
      List<PageArt> pictures = pictures(segment);
      overview.add(segment, pictures, book.sheets().size() + 1, ids(own));
      pages.page(segment, own, findings.getOrDefault(segment.index(), List.of()), pictures);
    }
    bookmarks.addPanels(strip.script());
    unplaced(parts.getOrDefault(-1, List.of()));
    cover.draw(paper, overview);
    furniture();
  }

  private List<PageArt> pictures(Segment segment) throws IOException {
    return art.isPresent()
        ? art.get().between(segment.topPx(), segment.bottomPx(), book.document())
        : List.of();
  }

  private static List<String> ids(List<PanelPart> parts) {
    return parts.stream().flatMap(part -> part.cues().stream()).map(Cue::id).toList();
  }

  /** The findings of each segment, from the top. */
  private Map<Integer, List<Finding>> placed() {
    if (segments.isEmpty()) {
      return Map.of();
    }
    return strip.findings().stream()
        .filter(finding -> finding.box().isPresent())
        .sorted(Comparator.comparingDouble(FoundNote::topPx))
        .collect(
            Collectors.groupingBy(
                finding -> Segment.at(FoundNote.topPx(finding), segments).index()));
  }

  private void unplaced(List<PanelPart> parts) {
    List<Finding> others =
        strip.findings().stream()
            .filter(finding -> segments.isEmpty() || finding.box().isEmpty())
            .toList();
    int page = book.sheets().size();
    pages.unplaced(parts, others);
    if (book.sheets().size() > page) {
      bookmarks.add("Without a place", book.sheets().get(page).page());
    }
  }

  /** Adds the head and foot of every page. */
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
    sheet.painter().text(line, new XY(Paper.SIDE, y), TextStyle.QUIET);
  }
}
