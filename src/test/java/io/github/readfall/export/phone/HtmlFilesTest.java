package io.github.readfall.export.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import nu.validator.validation.SimpleDocumentValidator;
import org.junit.jupiter.api.Test;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;

/** Every page that is written, before the Nu Html Checker, which knows the HTML Standard. */
class HtmlFilesTest {

  private static final String SCHEMA = "http://s.validator.nu/html5-rdfalite.rnc";

  private record Complaints(List<String> all) implements ErrorHandler {
    @Override
    public void warning(SAXParseException e) {
      error(e);
    }

    @Override
    public void error(SAXParseException e) {
      all.add("line " + e.getLineNumber() + ": " + e.getMessage());
    }

    @Override
    public void fatalError(SAXParseException e) {
      error(e);
    }
  }

  @Test
  void everyPageIsValid() throws Exception {
    SimpleDocumentValidator validator = new SimpleDocumentValidator();
    Complaints complaints = new Complaints(new ArrayList<>());
    validator.setUpMainSchema(SCHEMA, complaints);
    validator.setUpValidatorAndParsers(complaints, true, false);
    for (Path file : DrawnEpisode.sample().files()) {
      if (file.toString().endsWith(".html")) {
        validator.checkHtmlInputSource(new InputSource(new StringReader(Files.readString(file))));
        assertEquals(List.of(), complaints.all(), file.toString());
      }
    }
  }
}
