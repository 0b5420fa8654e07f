package io.github.readfall.cli.report;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.viewing.Audit;
import io.github.readfall.base.viewing.AuditRow;
import io.github.readfall.base.viewing.Reader;
import io.github.readfall.type.text.DisplayCells;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Audits of lettering as tables that a person reads. */
public final class AuditTable {

  /** The caution beside the figures. */
  public static final String CAUTION =
      "Sizes are nominal, 160 dp to the inch; real screens differ by some per cent. Readers with"
          + " low vision need\n"
          + "larger letters (UKAAF G003, Clear Print), and this table replaces neither an eye"
          + " specialist nor\n"
          + "the rules on accessibility where you publish.";

  private static final String FAILS = "too small";
  private static final int READERS = Reader.ALL.size();

  /** Columns of numbers, aligned right. */
  private static final Set<String> NUMBERS = Set.of("px", "dp", "mm", "from");

  private AuditTable() {}

  /** A measured height on every phone, for every reader. */
  public static String of(Audit audit) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(head());
    audit.own().forEach(row -> rows.add(own(row)));
    for (int i = 0; i < audit.common().size(); i += READERS) {
      rows.add(common(audit.common().subList(i, i + READERS)));
    }
    return title(audit) + "\n\n" + table(rows);
  }

  private static String title(Audit audit) {
    String name = audit.kind().inWords();
    String better =
        audit.betterArcmin() > audit.leastArcmin()
            ? ", " + AuditRow.up(audit.betterArcmin()) + "′ or more with ease"
            : "";
    return Character.toUpperCase(name.charAt(0))
        + name.substring(1)
        + String.format(
            Locale.ROOT,
            " of %.1f px on a strip %.0f px wide; read from %s′ on%s",
            audit.heightPx(),
            audit.stripWidthPx(),
            AuditRow.up(audit.leastArcmin()),
            better);
  }

  private static List<String> head() {
    List<String> head = new ArrayList<>(List.of("phone", "dp", "mm"));
    for (Reader reader : Reader.ALL) {
      head.add(String.format(Locale.ROOT, "%s, %.0f mm", reader.name(), reader.distanceMm()));
      head.add("from");
    }
    return head;
  }

  /** A phone of the series has one reader, so one pair of cells. */
  private static List<String> own(AuditRow row) {
    List<String> cells = new ArrayList<>();
    cells.add(
        String.format(
            Locale.ROOT,
            "\"%s\", %.0f dp at %.0f mm",
            row.phone().name(),
            row.phone().widthDp(),
            row.phone().distanceMm()));
    cells.addAll(size(row));
    cells.addAll(seen(row));
    return cells;
  }

  private static List<String> common(List<AuditRow> readers) {
    List<String> cells = new ArrayList<>();
    cells.add(String.format(Locale.ROOT, "%.0f dp", readers.get(0).phone().widthDp()));
    cells.addAll(size(readers.get(0)));
    readers.forEach(row -> cells.addAll(seen(row)));
    return cells;
  }

  private static List<String> size(AuditRow row) {
    return List.of(
        String.format(Locale.ROOT, "%.1f", row.dp()), String.format(Locale.ROOT, "%.2f", row.mm()));
  }

  private static List<String> seen(AuditRow row) {
    return List.of(mark(row), AuditRow.up(row.leastPx()) + " px");
  }

  private static String mark(AuditRow row) {
    return AuditRow.down(row.arcmin()) + "′" + (row.passes() ? "" : " " + FAILS);
  }

  /** Balloons whose lettering exists, each on the phone of its series that shows it smallest. */
  public static String ofBalloons(List<Audit> audits) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("id", "height of", "px", "dp", "mm", "seen", "from"));
    for (Audit audit : audits) {
      AuditRow row = smallest(audit);
      List<String> cells = new ArrayList<>(List.of(audit.balloon(), audit.kind().inWords()));
      cells.add(String.format(Locale.ROOT, "%.1f", audit.heightPx()));
      cells.addAll(size(row));
      cells.addAll(seen(row));
      rows.add(cells);
    }
    return table(rows);
  }

  private static AuditRow smallest(Audit audit) {
    return audit.own().stream()
        .min((a, b) -> Double.compare(a.arcmin(), b.arcmin()))
        .orElseThrow(() -> new IllegalArgumentException("a series has a phone"));
  }

  /** A finding in words. */
  public static String sentence(Finding finding) {
    return "  "
        + finding.severity().word()
        + "  "
        + finding.message()
        + (finding.advice().isEmpty() ? "" : " " + finding.advice())
        + "  ["
        + finding.rule()
        + "]";
  }

  private static String table(List<List<String>> rows) {
    int columns = rows.get(0).size();
    StringBuilder out = new StringBuilder();
    int[] widths = new int[columns];
    for (List<String> row : rows) {
      for (int i = 0; i < row.size(); i++) {
        widths[i] = Math.max(widths[i], DisplayCells.of(row.get(i)));
      }
    }
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < row.size(); i++) {
        String gap = " ".repeat(widths[i] - DisplayCells.of(row.get(i)));
        boolean right = NUMBERS.contains(rows.get(0).get(i));
        line.append(i == 0 ? "  " : "   ").append(right ? gap + row.get(i) : row.get(i) + gap);
      }
      out.append(line.toString().stripTrailing()).append('\n');
    }
    return out.toString();
  }
}
