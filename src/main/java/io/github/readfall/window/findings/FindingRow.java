package io.github.readfall.window.findings;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.window.parts.SeverityIcon;
import java.awt.Color;
import java.awt.Component;
import java.util.StringJoiner;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/** A finding in the list: its severity and message, and its place below. */
final class FindingRow extends JPanel implements ListCellRenderer<Finding> {

  private static final long serialVersionUID = 1;

  private final JLabel message = new JLabel();
  private final JLabel place = new JLabel();

  FindingRow() {
    super(new MigLayout("insets 6 14 6 10, gap 8 1, fillx", "[][grow,fill]", "[][]"));
    add(message, "skip 0, span 2, wmin 0, wrap");
    add(place, "skip 1, wmin 0");
  }

  @Override
  public Component getListCellRendererComponent(
      JList<? extends Finding> list, Finding finding, int index, boolean chosen, boolean focused) {
    int size = list.getFont().getSize() * 3 / 4;
    message.setIcon(new SeverityIcon(finding.severity(), size));
    message.setIconTextGap(size * 3 / 4);
    message.setText(
        finding
            .reason()
            .map(why -> Wording.of("findings.ignored", finding.message(), why))
            .orElse(finding.message()));
    place.setText(place(finding));
    place.setBorder(BorderFactory.createEmptyBorder(0, size + size * 3 / 4, 0, 0));
    Color ink = chosen ? list.getSelectionForeground() : list.getForeground();
    message.setForeground(ink);
    place.setForeground(chosen ? ink : UIManager.getColor("Readfall.quiet"));
    place.setFont(UIManager.getFont("small.font"));
    setBackground(chosen ? list.getSelectionBackground() : list.getBackground());
    getAccessibleContext()
        .setAccessibleName(
            finding.severity().word() + ": " + message.getText() + " " + place.getText());
    return this;
  }

  private static String place(Finding finding) {
    StringJoiner parts = new StringJoiner("  ·  ");
    parts.add(finding.rule());
    finding.where().panel().ifPresent(panel -> parts.add(Wording.of("findings.panel", panel)));
    if (!finding.where().file().isEmpty()) {
      parts.add(finding.where().file());
    }
    finding.where().line().ifPresent(line -> parts.add(Wording.of("findings.line", line)));
    return parts.toString();
  }
}
