package io.github.readfall.languages.xliff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.languages.xml.XmlFault;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sizes as XLIFF 2.1, section 5.7, counts them. */
class SizesTest {

  /** The numbers were counted by hand from the code charts of Unicode. */
  @ParameterizedTest
  @CsvSource({
    "Warte hier.,11,11,22,44",
    "\uD83D\uDC68\u200D\uD83D\uDC69\u200D\uD83D\uDC67\u200D\uD83D\uDC66,7,25,22,28",
    "次檢視,3,9,6,12",
    "조회,2,6,4,8"
  })
  void eachProfileCountsInItsOwnUnits(String text, int points, int utf8, int utf16, int utf32) {
    assertEquals(points, CodeUnits.CODEPOINTS.size(text));
    assertEquals(utf8, CodeUnits.UTF8.size(text));
    assertEquals(utf16, CodeUnits.UTF16.size(text));
    assertEquals(utf32, CodeUnits.UTF32.size(text));
  }

  @ParameterizedTest
  @CsvSource({"é,1,2", "조회,2,4"})
  void normalizationChangesTheSize(String text, int nfc, int nfd) {
    assertEquals(nfc, CodeUnits.CODEPOINTS.size(CodeUnits.normalized(text, "nfc")));
    assertEquals(nfd, CodeUnits.CODEPOINTS.size(CodeUnits.normalized(text, "nfd")));
    assertEquals(
        nfc, CodeUnits.CODEPOINTS.size(CodeUnits.normalized(text, "none")), "written composed");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          12|0|12
          *|0|-1
          3,*|3|-1
          3, 9|3|9
          0|0|0
          """)
  void aRestrictionIsTheMostOrTheLeastAndTheMost(String written, int least, int most) {
    SizeRestriction read = SizeRestriction.of(written).orElseThrow();
    assertEquals(least, read.least());
    assertEquals(most, read.most().orElse(-1));
  }

  /** The first four are the bad ones of OASIS's test suite for the module. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"ninety", "*6", "25,100.5", "35,star", "9,8", "''", "-1"})
  void whatIsNoRestrictionIsNone(String written) {
    assertTrue(SizeRestriction.of(written).isEmpty());
  }

  private static List<String> broken(String profiles, String onUnit, String target)
      throws XmlFault {
    Xliff read =
        Samples.read(
            "<xliff xmlns='urn:oasis:names:tc:xliff:document:2.0' version='2.1' srcLang='en'"
                + " trgLang='de' xmlns:slr='urn:oasis:names:tc:xliff:sizerestriction:2.0'>"
                + "<file id='f'><slr:profiles generalProfile='xliff:codepoints' "
                + profiles
                + "</slr:profiles><group id='g' slr:sizeRestriction='20'><unit id='u' "
                + onUnit
                + "><segment><source>x</source><target>"
                + target
                + "</target></segment></unit></group></file></xliff>");
    return new Sizes(read.document(), read.files().get(0))
        .broken().stream()
            .map(b -> b.element().local() + " " + b.size() + " " + b.limit() + " " + b.unit())
            .toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          >|slr:sizeRestriction='11'|Warte hier.|
          >|slr:sizeRestriction='10'|Warte hier.|unit 11 10 characters
          >|slr:sizeRestriction='15,*'|Warte hier.|unit 11 15 characters
          >|slr:sizeRestriction='*'|Warte hier, ja, wirklich hier.|group 30 20 characters
          ><slr:normalization general='nfd'/>|slr:sizeRestriction='1'|é|unit 2 1 characters
          ><slr:normalization general='nfc'/>|slr:sizeRestriction='1'|e&#x301;|
          >|slr:sizeRestriction='3'|ab<ph id='1'/>c|
          >|slr:sizeRestriction='3'|ab<ph id='1' slr:sizeInfo='4'/>c|unit 7 3 characters
          storageProfile='xliff:utf8'>|slr:storageRestriction='8'|次檢視|unit 9 8 bytes
          storageProfile='xliff:utf16'>|slr:storageRestriction='8'|次檢視|
          storageProfile='xliff:utf32'>|slr:storageRestriction='8'|次檢視|unit 12 8 bytes
          storageProfile='other:profile'>|slr:storageRestriction='any'|次檢視|
          """)
  void aRestrictionIsBrokenByWhatIsInIt(String profiles, String unit, String target, String found)
      throws XmlFault {
    assertEquals(found == null ? List.of() : List.of(found), broken(profiles, unit, target));
  }
}
