package io.github.readfall.export.pdf;

import io.github.readfall.base.geom.XY;
import io.github.readfall.type.text.Language;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/** The first page: the figures of the episode. */
final class Cover {

  private static final String CAUTION =
      "Sizes are nominal, 160 dp to the inch; real screens differ by some per cent. Readers with"
          + " low vision need larger letters (UKAAF G003, Clear Print), and these figures stand in"
          + " for neither an eye specialist nor the rules on accessibility where you publish.";

  private static final double FULL = Paper.WIDTH - 2 * Paper.SIDE;
  private static final double NAMES = 84;
  private static final double CAUTION_WIDTH = 360;

  private final Book book;
  private final ProofStrip strip;
  private final TextSetter setter;
  private final ProofLanguages languages;
  private final Sheet sheet;
  private final PDStructureElement section;

  /** Begins a document with the cover; its content is written last. */
  Cover(Book book, ProofStrip strip, TextSetter setter) {
    this.book = book;
    this.strip = strip;
    this.setter = setter;
    this.languages = ProofLanguages.of(strip.script());
    this.sheet = book.add();
    this.section = book.structure().add(TagStructure.SECTION);
    languages.mark(section, languages.notes());
  }

  Sheet sheet() {
    return sheet;
  }

  /** Writes it. */
  void draw(Paper paper, OverviewPages overview) {
    double y = Paper.TOP;
    PDStructureElement title = book.structure().add(TagStructure.TITLE, section);
    title.setLanguage(languages.script().tag());
    y = write(strip.title(), TextStyle.TITLE, languages.script(), title, y, FULL);
    y = text(subtitle(), TextStyle.SUBTITLE, y + 2, FULL) + 14;
    for (CoverFigures figure : CoverFigures.of(strip, paper)) {
      y = figure(figure, y);
    }
    y = text(CAUTION, TextStyle.ASIDE, y + 8, CAUTION_WIDTH);
    for (String family : book.faces().outlined()) {
      y =
          text(
              "The file of the face "
                  + family
                  + " does not let its letters be embedded, so they are drawn as outlines here;"
                  + " what they say can be read and searched all the same.",
              TextStyle.ASIDE,
              y + 4,
              CAUTION_WIDTH);
    }
    overview.draw(sheet, book.structure().add(TagStructure.FIGURE, section), y + 18);
  }

  private String subtitle() {
    String episode = strip.script().episode();
    Language language = languages.strip();
    String name = language.locale().getDisplayName(Locale.ENGLISH);
    return "Proof for an editor"
        + (episode.isBlank() ? "" : "  ·  episode " + episode)
        + "  ·  "
        + name
        + " ("
        + strip.script().language()
        + ")";
  }

  private double figure(CoverFigures figure, double y) {
    PDStructureElement element = book.structure().add(TagStructure.TEXT, section);
    List<ColumnRow> name =
        setter.rows(figure.name(), TextStyle.FIGURE_NAME, languages.notes(), 0, NAMES, element);
    List<ColumnRow> value =
        setter.rows(figure.value(), TextStyle.FIGURE, languages.notes(), 0, FULL - NAMES, element);
    new Entry(y, name, FindingKey.NONE).writeOn(sheet, new XY(Paper.SIDE, y));
    Entry said = new Entry(y, value, FindingKey.NONE);
    said.writeOn(sheet, new XY(Paper.SIDE + NAMES, y));
    return y + said.heightPt() + 3;
  }

  private double text(String text, TextStyle style, double y, double width) {
    PDStructureElement element = book.structure().add(TagStructure.TEXT, section);
    return write(text, style, languages.notes(), element, y, width);
  }

  private double write(
      String text,
      TextStyle style,
      Language language,
      PDStructureElement element,
      double y,
      double width) {
    List<ColumnRow> rows = new ArrayList<>(setter.rows(text, style, language, 0, width, element));
    Entry entry = new Entry(y, rows, FindingKey.NONE);
    entry.writeOn(sheet, new XY(Paper.SIDE, y));
    return y + entry.heightPt();
  }
}
