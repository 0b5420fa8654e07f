package io.github.readfall.type.font;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.type.font.Embedding.Permission;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The values of {@code fsType} (OpenType specification, "OS/2", fsType). */
class EmbeddingTest {

  @ParameterizedTest(name = "{0}: {5}")
  @CsvSource(
      delimiter = '|',
      value = {
        "0x0000 | INSTALLABLE       | true  | true  | true  | nothing is forbidden",
        "0x0002 | RESTRICTED        | true  | true  | false | never to be embedded",
        "0x0004 | PREVIEW_AND_PRINT | true  | true  | true  | documents are read only",
        "0x0008 | EDITABLE          | true  | true  | true  | documents may be edited",
        "0x0100 | INSTALLABLE       | false | true  | true  | bit 8 is no level: whole or not at all",
        "0x0104 | PREVIEW_AND_PRINT | false | true  | true  | bit 8 with a level",
        "0x0200 | INSTALLABLE       | true  | false | false | bit 9: bitmaps only",
        "0x0208 | EDITABLE          | true  | false | false | bit 9 with a level",
        "0x0302 | RESTRICTED        | false | false | false | all together",
        "0x000C | EDITABLE          | true  | true  | true  | old fonts set several: the freest counts",
        "0x0006 | PREVIEW_AND_PRINT | true  | true  | true  | old fonts set several: the freest counts",
        "0x0001 | INSTALLABLE       | true  | true  | true  | bit 0 is reserved and says nothing"
      })
  void fsType(
      String value,
      Permission permission,
      boolean subsetting,
      boolean outlines,
      boolean allowed,
      String why) {
    Embedding embedding = Embedding.of(Integer.decode(value));
    assertEquals(new Embedding(permission, subsetting, outlines), embedding, why);
    assertEquals(allowed, embedding.isAllowed(), why);
  }
}
