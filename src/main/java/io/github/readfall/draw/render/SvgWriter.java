package io.github.readfall.draw.render;

import io.github.readfall.draw.Drawing;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes a drawing as SVG 1.1; the words of its balloons are in each group's title. */
public final class SvgWriter {

  private static final String SVG = "http://www.w3.org/2000/svg";

  private SvgWriter() {}

  /** The ways of writing letters. */
  public enum Letters {
    /** As outlines: no font is needed to see them. */
    OUTLINES,
    /** As text that can be edited, and looks right only if the faces are installed. */
    LIVE
  }

  /** The background of all marks. */
  @FunctionalInterface
  public interface Ground {

    /** Nothing: the picture is transparent. */
    Ground NONE = out -> {};

    /**
     * Writes its elements.
     *
     * @param out takes them, in UTF-8
     * @throws IOException if the stream cannot be written
     */
    void writeTo(OutputStream out) throws IOException;
  }

  /**
   * Writes the picture on its paper, letters as outlines.
   *
   * @throws IOException if the stream cannot be written
   */
  public static void write(Drawing drawing, OutputStream out) throws IOException {
    String paper =
        "<rect width=\"100%\" height=\"100%\" fill=\"" + drawing.paper().hex() + "\"></rect>";
    Ground ground = to -> to.write(paper.getBytes(StandardCharsets.UTF_8));
    write(drawing, ground, Letters.OUTLINES, out);
  }

  /**
   * Writes the picture over another background than its paper.
   *
   * @param ground in place of the paper
   * @throws IOException if the stream cannot be written
   */
  public static void write(Drawing drawing, Ground ground, Letters letters, OutputStream out)
      throws IOException {
    try {
      XMLStreamWriter xml =
          XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out, "UTF-8");
      start(xml, drawing);
      xml.flush();
      ground.writeTo(out);
      SvgMarks marks = new SvgMarks(xml, letters);
      drawing.marks().forEach(mark -> mark.paintOn(marks));
      xml.writeEndElement();
      xml.writeEndDocument();
      xml.close();
    } catch (XMLStreamException | SvgMarks.Unwritable e) {
      throw fault(e);
    }
  }

  /** The exception that the stream itself has thrown, however it is wrapped. */
  private static IOException fault(Exception e) {
    Throwable cause = e instanceof SvgMarks.Unwritable ? e.getCause() : e;
    if (cause instanceof XMLStreamException xml
        && xml.getNestedException() instanceof IOException io) {
      return io;
    }
    return new IOException(e.getMessage(), e);
  }

  private static void start(XMLStreamWriter xml, Drawing drawing) throws XMLStreamException {
    xml.writeStartDocument("UTF-8", "1.0");
    xml.writeStartElement("svg");
    xml.writeDefaultNamespace(SVG);
    xml.writeAttribute("version", "1.1");
    xml.writeAttribute("width", Integer.toString(drawing.widthPx()));
    xml.writeAttribute("height", Integer.toString(drawing.heightPx()));
    xml.writeAttribute("viewBox", "0 0 " + drawing.widthPx() + " " + drawing.heightPx());
    xml.writeAttribute("xml:lang", drawing.language());
    SvgMarks.title(xml, drawing.title());
  }
}
