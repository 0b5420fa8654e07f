package io.github.readfall.window.style;

import java.awt.Color;
import java.awt.Component;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/** An entry of the style list: its name, and the values set in the series. */
final class SubjectRow extends JPanel implements ListCellRenderer<SubjectList.Entry> {

  private static final long serialVersionUID = 1;

  private final JLabel name = new JLabel();
  private final JLabel says = new JLabel();

  SubjectRow() {
    super(new MigLayout("insets 3 14 3 10, gap 12, fillx", "[][grow,right]"));
    add(name, "shrink 0");
    add(says, "wmin 0");
  }

  @Override
  public Component getListCellRendererComponent(
      JList<? extends SubjectList.Entry> list,
      SubjectList.Entry entry,
      int index,
      boolean chosen,
      boolean focused) {
    name.setText(entry.subject().name());
    says.setText(entry.says());
    Color ink = chosen ? list.getSelectionForeground() : list.getForeground();
    name.setForeground(ink);
    says.setForeground(chosen ? ink : UIManager.getColor("Readfall.quiet"));
    setBackground(chosen ? list.getSelectionBackground() : list.getBackground());
    getAccessibleContext().setAccessibleName(name.getText() + " " + says.getText());
    return this;
  }
}
