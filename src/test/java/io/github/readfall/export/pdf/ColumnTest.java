package io.github.readfall.export.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.lettering.typeset.Sample;
import io.github.readfall.type.text.TextLine;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.junit.jupiter.api.Test;

class ColumnTest {

  private static final TextLine LINE =
      new Labels(Sample.shelf(), HouseStyle.DEFAULT).line("x", 7, false);
  private static final PDStructureElement ELEMENT =
      new PDStructureElement("P", new PDStructureTreeRoot());

  /** Rows 10 points high. */
  private static Entry entry(double wanted, int rows) {
    ColumnRow row = new ColumnRow(LINE, 0, 8, 10, TextStyle.INK, ELEMENT);
    return new Entry(wanted, Collections.nCopies(rows, row), FindingKey.NONE);
  }

  private static List<Double> tops(Column column) {
    return column.placed().stream().map(Column.Placed::topPt).toList();
  }

  @Test
  void whatHasRoomStandsWhereItWants() {
    Column column = Column.of(List.of(entry(30, 2), entry(90, 1)), 0, 200);
    assertEquals(List.of(30.0, 90.0), tops(column));
    assertEquals(List.of(), column.rest());
  }

  @Test
  void whatWouldLieOnAnotherIsMovedDownAndWhatWouldFallOffUp() {
    Column column = Column.of(List.of(entry(30, 2), entry(35, 2), entry(190, 3)), 0, 200);
    assertEquals(List.of(30.0, 55.0, 170.0), tops(column));
    assertEquals(List.of(), column.rest());
  }

  @Test
  void whatFindsNoRoomIsLeftOverRowByRow() {
    Column column = Column.of(List.of(entry(0, 3), entry(0, 4), entry(0, 2)), 0, 60);
    assertEquals(List.of(0.0, 35.0), tops(column));
    assertEquals(
        List.of(3, 2), column.placed().stream().map(p -> p.entry().rows().size()).toList());
    assertEquals(List.of(2, 2), column.rest().stream().map(e -> e.rows().size()).toList());
  }

  @Test
  void noRowIsLostHoweverManyColumnsItTakes() {
    List<Entry> rest = Stream.generate(() -> entry(0, 7)).limit(40).toList();
    int rows = 0;
    for (int column = 0; !rest.isEmpty(); column++) {
      assertTrue(column < 100, "it never ends");
      Column filled = Column.stacked(rest, 0, 95);
      rows += filled.placed().stream().mapToInt(p -> p.entry().rows().size()).sum();
      rest = filled.rest();
    }
    assertEquals(7 * 40, rows);
  }

  @Test
  void lettersBesideTheStripKeepApart() {
    double[] tops =
        NearestStacking.tops(new double[] {0, 1, 2, 96}, new double[] {9, 9, 9, 9}, 1, 0, 100);
    assertArrayEquals(new double[] {0, 10, 20, 91}, tops, 1e-9);
  }
}
