package io.github.readfall.window.phone;

import io.github.readfall.base.viewing.Audit;
import io.github.readfall.base.viewing.AuditRow;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.job.LetteringAudit;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.script.Cue;
import io.github.readfall.window.parts.CueWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.table.AbstractTableModel;

/**
 * How large the smallest letters of a strip look: a row for every phone of the series, then one for
 * every common phone width and every reader.
 */
final class ReadersTableModel extends AbstractTableModel {

  private static final long serialVersionUID = 1;

  private static final List<String> COLUMNS =
      List.of("phone", "from", "seen", "least", "verdict", "smallest");

  private transient Optional<Audit> audit = Optional.empty();
  private transient Optional<Cue> cue = Optional.empty();
  private transient List<Row> rows = List.of();

  /**
   * A row.
   *
   * @param seen how large the letters look
   * @param isOwn whether the phone is one of the series'
   */
  record Row(AuditRow seen, boolean isOwn) {}

  /** Shows the figures of another strip. */
  void show(SetEpisode set) {
    audit = LetteringAudit.ofSmallest(set);
    cue =
        audit.flatMap(
            one ->
                set.balloons().stream()
                    .map(SetBalloon::cue)
                    .filter(said -> said.id().equals(one.balloon()))
                    .findFirst());
    List<Row> all = new ArrayList<>();
    audit.ifPresent(
        one -> {
          one.own().forEach(row -> all.add(new Row(row, true)));
          one.common().forEach(row -> all.add(new Row(row, false)));
        });
    boolean isAsMany = all.size() == rows.size();
    rows = List.copyOf(all);
    if (isAsMany && !rows.isEmpty()) {
      fireTableRowsUpdated(0, rows.size() - 1);
    } else {
      fireTableDataChanged();
    }
  }

  /** The audit; empty if nothing is lettered. */
  Optional<Audit> audit() {
    return audit;
  }

  /** The cue with the smallest letters. */
  Optional<Cue> cue() {
    return cue;
  }

  Row row(int index) {
    return rows.get(index);
  }

  @Override
  public int getRowCount() {
    return rows.size();
  }

  @Override
  public int getColumnCount() {
    return COLUMNS.size();
  }

  @Override
  public String getColumnName(int column) {
    return Wording.of("readers.column." + COLUMNS.get(column));
  }

  @Override
  public String getValueAt(int row, int column) {
    AuditRow seen = rows.get(row).seen();
    return switch (COLUMNS.get(column)) {
      case "phone" -> phone(rows.get(row));
      case "from" -> Wording.of("readers.mm", Math.round(seen.phone().distanceMm()) + "");
      case "seen" -> Wording.of("readers.arcmin", AuditRow.down(seen.arcmin()));
      case "least" ->
          Wording.of("readers.arcmin", audit.map(one -> AuditRow.up(one.leastArcmin())).orElse(""));
      case "verdict" -> verdict(seen);
      default -> cue.map(CueWords::of).orElse("");
    };
  }

  private static String phone(Row row) {
    String name = row.seen().phone().name();
    String widthDp = Long.toString(Math.round(row.seen().phone().widthDp()));
    return Wording.of(row.isOwn() ? "readers.own" : "readers.common", name, widthDp);
  }

  private String verdict(AuditRow seen) {
    if (!seen.passes()) {
      return Wording.of("readers.small");
    }
    boolean isEasy = audit.filter(one -> one.heightPx() >= seen.betterPx()).isPresent();
    return Wording.of(isEasy ? "readers.easy" : "readers.enough");
  }
}
