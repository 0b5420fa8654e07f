package io.github.readfall.app;

import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/** The line above a part of the window: what it is, and on the right what can be set. */
final class Heading extends JPanel {

  private static final long serialVersionUID = 1;

  private final JLabel title = new JLabel();

  Heading(String words, JComponent... controls) {
    super(new MigLayout("insets 7 14 7 12, gap 6, hidemode 3"));
    title.setText(words);
    title.putClientProperty("FlatLaf.styleClass", "h4");
    add(title, "wmin 0, pushx, hmin 24lp");
    for (JComponent control : controls) {
      add(control);
    }
    updateUI();
  }

  /** Says something else. */
  void say(String words) {
    title.setText(words);
  }

  /** Says what a control is, for those who do not see where it stands. */
  void names(JComponent control) {
    title.setLabelFor(control);
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setBorder(BorderFactory.createMatteBorder(0, 0, 1, 0, UIManager.getColor("Readfall.line")));
  }
}
