package io.github.readfall.app;

import java.awt.BorderLayout;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** A view by itself, or with a second one beside it; then each says what it shows. */
final class BesidePane extends JPanel {

  private static final long serialVersionUID = 1;

  private final JLabel first;
  private final JLabel second;
  private final JPanel right;

  BesidePane(JComponent view, JComponent beside) {
    super(
        new MigLayout(
            "insets 0, gap 1 0, fill, hidemode 3", "[grow,fill,sg][grow,fill,sg]", "[grow,fill]"));
    first = caption();
    second = caption();
    first.setLabelFor(view);
    second.setLabelFor(beside);
    right = half(second, beside);
    add(half(first, view), "wmin 0");
    add(right, "wmin 0");
    alone();
  }

  private static JLabel caption() {
    JLabel caption = new JLabel();
    caption.setBorder(BorderFactory.createEmptyBorder(5, 14, 5, 14));
    Quiet.speaks(caption);
    return caption;
  }

  private static JPanel half(JLabel caption, JComponent view) {
    JPanel half = new JPanel(new BorderLayout());
    half.add(caption, BorderLayout.NORTH);
    half.add(view);
    return half;
  }

  /** Shows the first view by itself. */
  void alone() {
    first.setVisible(false);
    right.setVisible(false);
    revalidate();
  }

  /** Shows both views, with what is to be seen in each. */
  void both(String one, String other) {
    first.setText(one);
    second.setText(other);
    first.setVisible(true);
    right.setVisible(true);
    revalidate();
  }
}
