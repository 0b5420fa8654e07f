package io.github.readfall.languages.xml;

import io.github.readfall.base.OneCall;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Checks that a text is XML that may be read: well-formed, without a document type, not too deep.
 */
final class WellFormed {

  /** House default, no source. */
  private static final int MOST_DEPTH = 100;

  private static final String NO_DOCTYPE = "http://apache.org/xml/features/disallow-doctype-decl";

  private WellFormed() {}

  static void check(String text) throws XmlFault {
    try {
      SAXParserFactory factory = SAXParserFactory.newDefaultNSInstance();
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature(NO_DOCTYPE, true);
      factory.newSAXParser().parse(new InputSource(new StringReader(text)), new Depth());
    } catch (TooDeep e) {
      throw new XmlFault(0, "it is nested more than " + MOST_DEPTH + " deep: it is no XLIFF.");
    } catch (SAXParseException e) {
      throw fault(text, Math.max(1, e.getLineNumber()));
    } catch (SAXException e) {
      throw fault(text, 0);
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("the JDK's own parser lacks a feature", e);
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory cannot fail", e);
    }
  }

  private static XmlFault fault(String text, int line) {
    int type = text.indexOf("<!DOCTYPE");
    if (type >= 0) {
      return new XmlFault(
          (int) text.substring(0, type).chars().filter(c -> c == '\n').count() + 1,
          "it declares a document type, which could fetch or swell what it likes: take out"
              + " <!DOCTYPE …>.");
    }
    return new XmlFault(
        line, "it is not well-formed XML here: export it again, or fix the tags up to here.");
  }

  /** Stops if elements are nested too deeply. */
  @OneCall
  private static final class Depth extends DefaultHandler {

    private int depth;

    @Override
    public void startElement(String uri, String local, String name, Attributes attributes)
        throws SAXException {
      if (++depth > MOST_DEPTH) {
        throw new TooDeep();
      }
    }

    @Override
    public void endElement(String uri, String local, String name) {
      depth--;
    }

    @Override
    public void fatalError(SAXParseException fault) throws SAXException {
      throw fault; // and print nothing
    }
  }

  private static final class TooDeep extends SAXException {
    private static final long serialVersionUID = 1;
  }
}
