package io.github.readfall.export.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.FutureTask;
import nu.validator.validation.SimpleDocumentValidator;
import org.junit.jupiter.api.Test;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;

/** Every page that is written, before the Nu Html Checker, which knows the HTML Standard. */
class HtmlFilesTest {

  private static final String SCHEMA = "http://s.validator.nu/html5-rdfalite.rnc";

  /** The checker's schema is read by deep recursion. */
  private static final long STACK_BYTES = 16L << 20;

  private record Complaints(List<String> all) implements ErrorHandler {
    @Override
    public void warning(SAXParseException e) {
      error(e);
    }

    @Override
    public void error(SAXParseException e) {
      all.add(e.getSystemId() + ", line " + e.getLineNumber() + ": " + e.getMessage());
    }

    @Override
    public void fatalError(SAXParseException e) {
      error(e);
    }
  }

  @Test
  void everyPageIsValid() throws Exception {
    FutureTask<List<String>> check = new FutureTask<>(HtmlFilesTest::complaints);
    new Thread(null, check, "checker", STACK_BYTES).start();
    assertEquals(List.of(), check.get());
  }

  private static List<String> complaints() throws Exception {
    SimpleDocumentValidator validator = new SimpleDocumentValidator();
    Complaints complaints = new Complaints(new ArrayList<>());
    validator.setUpMainSchema(SCHEMA, complaints);
    validator.setUpValidatorAndParsers(complaints, true, false);
    List<Path> pages =
        DrawnEpisode.sample().files().stream()
            .filter(file -> file.toString().endsWith(".html"))
            .toList();
    assertFalse(pages.isEmpty());
    for (Path page : pages) {
      InputSource source = new InputSource(new StringReader(Files.readString(page)));
      source.setSystemId(page.toUri().toString());
      validator.checkHtmlInputSource(source);
    }
    return complaints.all();
  }
}
