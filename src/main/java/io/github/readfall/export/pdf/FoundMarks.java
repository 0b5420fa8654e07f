package io.github.readfall.export.pdf;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.draw.Mark;
import io.github.readfall.draw.Shapes;
import io.github.readfall.draw.StripLayers;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationText;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceDictionary;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;

/** Joins findings to their places: a letter beside the strip, lines, and a note to be opened. */
final class FoundMarks {

  private static final double ASIDE = 9;
  private static final double APART = 1.5;
  private static final double LINE = 0.55;
  private static final String AUTHOR = "Readfall";

  private final StripPage page;
  private final Paper paper;
  private final Sheet sheet;
  private final Book book;

  FoundMarks(StripPage page, Paper paper, Sheet sheet, Book book) {
    this.page = page;
    this.paper = paper;
    this.sheet = sheet;
    this.book = book;
  }

  /**
   * Draws them.
   *
   * @param notes from the top
   * @param column in which the first of them are
   */
  void draw(List<FoundNote> notes, Column column) throws IOException {
    double[] heights = new double[notes.size()];
    Arrays.fill(heights, heightPt(notes.size()));
    double[] wanted =
        notes.stream().mapToDouble(note -> place(note).y() - FindingKey.RADIUS_PT).toArray();
    double apart = Math.min(APART, room() / Math.max(1, notes.size()) - heightPt(notes.size()));
    double[] tops = NearestStacking.tops(wanted, heights, apart, Paper.TOP, Paper.BOTTOM);
    for (int i = 0; i < notes.size(); i++) {
      XY middle = new XY(Paper.SIDE + paper.stripPt() + ASIDE, tops[i] + heights[i] / 2);
      lines(notes.get(i), middle, i, column);
      notes.get(i).entry().key().drawOn(sheet, middle);
      note(notes.get(i), middle);
    }
  }

  /** The height that a letter may take in a column. */
  private static double heightPt(int letters) {
    return Math.min(2 * FindingKey.RADIUS_PT, room() / Math.max(1, letters));
  }

  private static double room() {
    return Paper.BOTTOM - Paper.TOP;
  }

  private XY place(FoundNote note) {
    return page.corner(note.finding().box().orElseThrow());
  }

  /** The lines from places to the edge of the strip, to be drawn under its letters. */
  void leaders(List<FoundNote> notes) {
    sheet.decoration(() -> notes.forEach(note -> line(place(note), edge(note), colour(note))));
  }

  private XY edge(FoundNote note) {
    return new XY(Paper.SIDE + paper.stripPt(), place(note).y());
  }

  private static Colour colour(FoundNote note) {
    return StripLayers.colourOf(note.finding());
  }

  private void lines(FoundNote note, XY middle, int index, Column column) {
    sheet.decoration(
        () -> {
          line(edge(note), middle, colour(note));
          if (index < column.placed().size()) {
            XY words = new XY(paper.findingsX(), column.placed().get(index).topPt());
            line(middle, words.plus(FindingKey.BESIDE.x(), FindingKey.BESIDE.y()), colour(note));
          }
        });
  }

  private void line(XY from, XY to, Colour colour) {
    Path line = Shapes.line(from, to);
    sheet.painter().line(new Mark.Line(line, colour, LINE, List.of()));
  }

  private void note(FoundNote note, XY middle) throws IOException {
    PDAnnotationText text = new PDAnnotationText();
    Box box = new Box(middle.x(), middle.y(), 0, 0).grownBy(FindingKey.RADIUS_PT);
    text.setRectangle(sheet.rectangle(box));
    text.setContents(note.text());
    text.setTitlePopup(AUTHOR);
    text.setName(PDAnnotationText.NAME_NOTE);
    text.setPrinted(true);
    text.setColor(colour(StripLayers.colourOf(note.finding())));
    text.setAppearance(unseen(box));
    sheet.note(text, book.structure().add(TagStructure.NOTE, note.section()));
  }

  private static PDColor colour(Colour colour) {
    float[] channels = {
      (colour.rgb() >> 16 & 0xff) / 255f,
      (colour.rgb() >> 8 & 0xff) / 255f,
      (colour.rgb() & 0xff) / 255f
    };
    return new PDColor(channels, PDDeviceRGB.INSTANCE);
  }

  /** An empty appearance: the page already shows the letter under the note. */
  private PDAppearanceDictionary unseen(Box box) {
    PDDocument document = book.document();
    PDAppearanceStream stream = new PDAppearanceStream(document);
    stream.setBBox(new PDRectangle((float) box.width(), (float) box.height()));
    PDAppearanceDictionary appearance = new PDAppearanceDictionary();
    appearance.setNormalAppearance(stream);
    return appearance;
  }
}
