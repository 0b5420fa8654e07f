package io.github.readfall.languages.xliff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.languages.xml.XmlFault;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.xml.sax.SAXException;

/** What is read and what is refused, beside what the schemas of OASIS say to the same. */
class XliffReaderTest {

  /** Valid by the schemas; each row of the table below spoils one thing in it. */
  private static final String GOOD =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <xliff xmlns="urn:oasis:names:tc:xliff:document:2.0"
             xmlns:slr="urn:oasis:names:tc:xliff:sizerestriction:2.0"
             version="2.1" srcLang="en" trgLang="de">
        <file id="ep1" original="episode-01.txt">
          <slr:profiles generalProfile="xliff:codepoints" storageProfile="xliff:utf8">
            <slr:normalization general="nfc" storage="nfc"/>
          </slr:profiles>
          <group id="p1" name="panel 1">
            <unit id="p1b1" slr:sizeRestriction="12" slr:storageRestriction="30">
              <notes><note id="n1" category="speaker">MAYA</note></notes>
              <segment id="s1" state="translated">
                <source>Wait here.</source>
                <target>Warte hier.</target>
              </segment>
            </unit>
            <unit id="p1b2">
              <segment id="s1"><source>No.</source></segment>
            </unit>
          </group>
        </file>
      </xliff>
      """;

  private final Path folder;

  XliffReaderTest(@TempDir Path folder) {
    this.folder = folder;
  }

  private static String refusal(String xml) {
    return assertThrows(XmlFault.class, () -> Samples.read(xml)).in("de.xlf");
  }

  @Test
  void aGoodFileIsReadAndValid() throws IOException, SAXException, XmlFault {
    assertTrue(Schemas.in(folder).fault(GOOD).isEmpty());
    Xliff read = Samples.read(GOOD);
    assertEquals("Warte hier.", read.units().get(0).target());
    assertEquals("MAYA", read.units().get(0).note("speaker").orElse(""));
  }

  /**
   * The verdict of the schemas was measured with the JDK's validator; it is measured here again.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          <segment id="s1" state=|<segment slr:sizeRestriction="9" id="s1" state=|invalid|line 12: a size cannot be restricted on a segment
          state="translated"|state="done"|invalid|line 12: state is "done"
          id="p1b1"|id="p1 b1"|invalid|line 10: "p1 b1" is no id
          id="p1b2"|id="p1b1"|valid|line 17: two elements unit of one file have the id "p1b1"
          trgLang="de"|version2=""|invalid|the element xliff has no trgLang
           trgLang="de"||valid|line 2: the element xliff has no trgLang
          sizeRestriction="12"|sizeRestriction="ninety"|valid|line 10: sizeRestriction is "ninety"
          sizeRestriction="12"|sizeRestriction="*6"|valid|line 10: sizeRestriction is "*6"
          sizeRestriction="12"|sizeRestriction="25,100.5"|valid|line 10: sizeRestriction is "25,100.5"
          sizeRestriction="12"|sizeRestriction="35,star"|valid|line 10: sizeRestriction is "35,star"
          storageRestriction="30"|storageRestriction="9,8"|valid|line 10: storageRestriction is "9,8"
          trgLang="de"|trgLang="en"|valid|line 2: srcLang and trgLang are both "en"
          trgLang="de"|trgLang="de_DE"|any|line 2: trgLang is "de_DE", which is no language tag
          trgLang="de"|trgLang="german"|any|line 2: trgLang is "german", which is no language tag
          version="2.1"|version="2.2"|any|line 2: it is XLIFF 2.2, and only 2.0 and 2.1 are read
          document:2.0|document:1.2|invalid|line 2: it is XLIFF 2.1, and only
          version="2.1"|version="1.2"|any|line 2: it is XLIFF 1.2, and only 2.0 and 2.1 are read
          <segment id="s1" state="translated">|<segment id="s1" subState="a:b">|any|line 12: there is a subState without a state
          <segment id="s1" state="translated">|<segment id="s1" state="final" subState="b">|any|line 12: subState is "b"
          <target>|<target order="3">|valid|line 12: the order of a target in unit "p1b1"
          <target>|<target order="0">|invalid|line 14: order is "0"
          <source>No.</source>||invalid|line 18: segment lacks source
          <file id="ep1"|<file|invalid|line 5: a file has no id
          """)
  void aSpoiltFileIsRefusedWithItsLine(String from, String to, String schema, String sentence)
      throws IOException, SAXException {
    String spoilt = GOOD.replaceFirst(java.util.regex.Pattern.quote(from), to == null ? "" : to);
    assertTrue(!spoilt.equals(GOOD), from);
    assertTrue(refusal(spoilt).contains(sentence), refusal(spoilt));
    boolean valid = Schemas.in(folder).fault(spoilt).isEmpty();
    assertTrue(schema.equals("any") || valid == schema.equals("valid"), "schema: " + valid);
  }

  @Test
  void notesBehindTheSegmentAreRefused() throws IOException, SAXException {
    String note = "<notes><note id=\"n1\" category=\"speaker\">MAYA</note></notes>";
    String moved = GOOD.replace(note, "").replaceFirst("</segment>", "</segment>" + note);
    assertTrue(Schemas.in(folder).fault(moved).isPresent());
    assertTrue(refusal(moved).contains("line 15: notes cannot stand here in unit"), refusal(moved));
  }

  @Test
  void idsThatStandTwiceInAUnitAreRefused() {
    String twice = GOOD.replace("Wait here.", "<ph id=\"1\"/>Wait <ph id=\"1\"/>here.");
    assertTrue(refusal(twice).contains("line 13: the id \"1\" is there twice"), refusal(twice));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<!DOCTYPE xliff SYSTEM \"file:///etc/passwd\">",
        "<!DOCTYPE xliff [<!ENTITY e SYSTEM \"file:///etc/passwd\">]>",
        "<!DOCTYPE xliff>"
      })
  void aDocumentTypeIsRefused(String type) {
    String sentence = refusal(GOOD.replace("<xliff ", type + "<xliff "));
    assertTrue(sentence.contains("line 2: it declares a document type"), sentence);
  }

  /** The billion laughs: ten entities, each ten of the one before. Common knowledge, no source. */
  @Test
  void entitiesThatSwellAreRefusedAtOnce() {
    StringBuilder bomb = new StringBuilder("<!DOCTYPE xliff [<!ENTITY l0 \"ha\">");
    for (int i = 1; i <= 10; i++) {
      bomb.append("<!ENTITY l" + i + " \"" + ("&l" + (i - 1) + ";").repeat(10) + "\">");
    }
    String xml = bomb + "]><xliff>&l10;</xliff>";
    assertTimeout(
        Duration.ofSeconds(2),
        () -> assertTrue(refusal(xml).contains("document type"), refusal(xml)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          <xliff><file></xliff>|line 1: it is not well-formed XML here
          <xliff|line 1: it is not well-formed XML here
          <x:xliff/>|line 1: it is not well-formed XML here
          <html/>|line 1: it is no XLIFF: its first element is html
          <xliff/>|line 1: it is XLIFF of no version
          <xliff>&nbsp;</xliff>|line 1: it is not well-formed XML here
          """)
  void whatIsNoXliffIsRefused(String xml, String sentence) {
    assertTrue(refusal(xml).contains(sentence), refusal(xml));
  }

  @Test
  void whatIsNestedTooDeepIsRefused() {
    String deep = "<a>".repeat(200_000) + "</a>".repeat(200_000);
    assertTrue(refusal(deep).contains("nested more than 100 deep"));
  }

  @Test
  void whatIsTooLargeIsRefused() {
    byte[] large = new byte[16 * 1024 * 1024 + 1];
    String sentence = assertThrows(XmlFault.class, () -> XliffReader.read(large)).in("de.xlf");
    assertTrue(sentence.contains("larger than 16 MiB"), sentence);
  }

  @Test
  void utf16AndLatin1AreReadAndWrittenAsTheyWere() throws XmlFault {
    for (var charset :
        new java.nio.charset.Charset[] {
          StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE, StandardCharsets.ISO_8859_1
        }) {
      boolean wide = charset.name().startsWith("UTF-16");
      String name = wide ? "UTF-16" : charset.name();
      String text = (wide ? "\uFEFF" : "") + GOOD.replace("UTF-8", name).replace("W", "Ä");
      byte[] bytes = text.getBytes(charset);
      Xliff read = XliffReader.read(bytes);
      assertEquals("Äarte hier.", read.units().get(0).target());
      org.junit.jupiter.api.Assertions.assertArrayEquals(bytes, read.document().bytes());
    }
  }

  @Test
  void aCharacterThatLatin1LacksIsWrittenByItsNumber() throws XmlFault {
    String text = GOOD.replace("UTF-8", "ISO-8859-1");
    Matched read =
        Matched.of(
            XliffReader.read(text.getBytes(StandardCharsets.ISO_8859_1)),
            Samples.script("PANEL 1\nMAYA: Wait here.\nMAYA: No.\n"));
    var cue = read.script().cues().get(0);
    Matched changed =
        read.withTarget(cue, "기다려.", io.github.readfall.languages.translate.State.FINAL);
    Xliff again = XliffReader.read(changed.xliff().document().bytes());
    assertEquals("기다려.", again.units().get(0).target());
  }

  @Test
  void wrongEncodingsAreRefused() {
    byte[] latin = GOOD.replace("Warte", "Wärte").getBytes(StandardCharsets.ISO_8859_1);
    assertTrue(
        assertThrows(XmlFault.class, () -> XliffReader.read(latin)).in("f").contains("no UTF-8"));
    byte[] lying = GOOD.replace("UTF-8", "UTF-16").getBytes(StandardCharsets.UTF_8);
    assertTrue(
        assertThrows(XmlFault.class, () -> XliffReader.read(lying)).in("f").contains("UTF-16"));
    byte[] odd = GOOD.replace("UTF-8", "windows-1252").getBytes(StandardCharsets.UTF_8);
    assertTrue(
        assertThrows(XmlFault.class, () -> XliffReader.read(odd)).in("f").contains("WINDOWS-1252"));
  }
}
