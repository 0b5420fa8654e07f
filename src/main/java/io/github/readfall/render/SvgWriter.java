package io.github.readfall.render;

import io.github.readfall.draw.Drawing;
import io.github.readfall.draw.Mark;
import io.github.readfall.draw.Painter;
import io.github.readfall.geom.Path;
import io.github.readfall.geom.SvgPath;
import java.io.IOException;
import java.io.OutputStream;
import java.util.stream.Collectors;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes a drawing as SVG 1.1. Letters are outlines, so no font is needed to see them; what they
 * say is kept in each group's title.
 */
public final class SvgWriter {

  private static final String SVG = "http://www.w3.org/2000/svg";

  private SvgWriter() {}

  /**
   * Writes the picture.
   *
   * @throws IOException where the stream cannot be written
   */
  public static void write(Drawing drawing, OutputStream out) throws IOException {
    try {
      XMLStreamWriter xml =
          XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out, "UTF-8");
      xml.writeStartDocument("UTF-8", "1.0");
      xml.writeStartElement("svg");
      xml.writeDefaultNamespace(SVG);
      xml.writeAttribute("version", "1.1");
      xml.writeAttribute("width", Integer.toString(drawing.widthPx()));
      xml.writeAttribute("height", Integer.toString(drawing.heightPx()));
      xml.writeAttribute("viewBox", "0 0 " + drawing.widthPx() + " " + drawing.heightPx());
      xml.writeAttribute("xml:lang", drawing.language());
      title(xml, drawing.title());
      xml.writeEmptyElement("rect");
      xml.writeAttribute("width", "100%");
      xml.writeAttribute("height", "100%");
      xml.writeAttribute("fill", drawing.paper().hex());
      Marks marks = new Marks(xml);
      drawing.marks().forEach(mark -> mark.paintOn(marks));
      xml.writeEndElement();
      xml.writeEndDocument();
      xml.close();
    } catch (XMLStreamException | Unwritable e) {
      throw new IOException(e.getMessage(), e);
    }
  }

  private static void title(XMLStreamWriter xml, String text) throws XMLStreamException {
    xml.writeStartElement("title");
    xml.writeCharacters(readable(text));
    xml.writeEndElement();
  }

  /** Without the characters that no XML 1.0 file may hold. */
  private static String readable(String text) {
    return text.codePoints()
        .filter(c -> c >= 0x20 && c != 0xFFFE && c != 0xFFFF && (c < 0xD800 || c > 0xDFFF))
        .mapToObj(Character::toString)
        .collect(Collectors.joining());
  }

  /** Carries a stream's fault out of a painter. */
  private static final class Unwritable extends IllegalStateException {
    private static final long serialVersionUID = 1;

    Unwritable(XMLStreamException cause) {
      super(cause.getMessage(), cause);
    }
  }

  /** One element for each mark. */
  private record Marks(XMLStreamWriter xml) implements Painter {

    /** Something that can fail as the stream does. */
    private interface Writing {
      void write() throws XMLStreamException;
    }

    private static void safely(Writing writing) {
      try {
        writing.write();
      } catch (XMLStreamException e) {
        throw new Unwritable(e);
      }
    }

    @Override
    public void fill(Mark.Fill fill) {
      safely(() -> path(SvgPath.of(fill.outline()), fill.colour().hex()));
    }

    @Override
    public void glyphs(Mark.Glyphs glyphs) {
      String outline = SvgPath.of(Path.of(GlyphOutlines.of(glyphs)));
      if (!outline.isEmpty()) {
        safely(() -> path(outline, glyphs.colour().hex()));
      }
    }

    private void path(String d, String fill) throws XMLStreamException {
      xml.writeEmptyElement("path");
      xml.writeAttribute("d", d);
      xml.writeAttribute("fill", fill);
    }

    @Override
    public void line(Mark.Line line) {
      safely(
          () -> {
            path(SvgPath.of(line.outline()), "none");
            xml.writeAttribute("stroke", line.colour().hex());
            xml.writeAttribute("stroke-width", SvgPath.number(line.widthPx()));
            xml.writeAttribute("stroke-linecap", "round");
            xml.writeAttribute("stroke-linejoin", "round");
            if (!line.dashesPx().isEmpty()) {
              xml.writeAttribute(
                  "stroke-dasharray",
                  line.dashesPx().stream().map(SvgPath::number).collect(Collectors.joining(" ")));
            }
          });
    }

    @Override
    public void group(Mark.Group group) {
      safely(
          () -> {
            xml.writeStartElement("g");
            xml.writeAttribute("id", group.id());
            if (!group.text().isEmpty()) {
              xml.writeAttribute("role", "img");
              title(xml, group.text());
            }
            group.marks().forEach(mark -> mark.paintOn(this));
            xml.writeEndElement();
          });
    }
  }
}
