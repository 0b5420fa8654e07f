package io.github.readfall.languages.xliff;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.transform.Source;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.xml.sax.SAXException;

/**
 * The schemas of XLIFF 2.1 (OASIS): the core and the size restriction module, as a library that is
 * used in tests alone carries them.
 */
record Schemas(Schema schema) {

  private static final String HOME = "/net/sf/okapi/lib/xliff2/";
  private static final List<String> FILES =
      List.of(
          "informativeCopiesOf3rdPartySchemas/w3c/xml.xsd",
          "xliff_core_2.0.xsd",
          "modules/size_restriction.xsd",
          "modules/metadata.xsd");

  /** Lays the files out as they import one another. */
  static Schemas in(Path folder) throws IOException, SAXException {
    for (String file : FILES) {
      Path copy = folder.resolve(file);
      Files.createDirectories(copy.getParent());
      try (InputStream in = Schemas.class.getResourceAsStream(HOME + file)) {
        Files.write(copy, in.readAllBytes());
      }
    }
    Source[] sources =
        FILES.stream()
            .map(file -> new StreamSource(folder.resolve(file).toUri().toString()))
            .toArray(Source[]::new);
    return new Schemas(
        SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI).newSchema(sources));
  }

  /** What the schemas have against a text; empty where it is valid. */
  Optional<String> fault(String xml) throws IOException {
    try {
      schema.newValidator().validate(new StreamSource(new StringReader(xml)));
      return Optional.empty();
    } catch (SAXException e) {
      return Optional.of(String.valueOf(e.getMessage()));
    }
  }
}
