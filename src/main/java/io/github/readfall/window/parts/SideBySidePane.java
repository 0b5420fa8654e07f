package io.github.readfall.window.parts;

import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** One view, or two side by side; above each is its heading. */
public final class SideBySidePane extends JPanel {

  private static final long serialVersionUID = 1;

  private static final String ALONE = "cell 0 1, span 2, wmin 0";
  private static final String HALF = "cell 0 1, wmin 0";

  private final MigLayout layout =
      new MigLayout(
          "insets 0, gap 1 0, fill, hidemode 3", "[grow,fill,sg][grow,fill,sg]", "[][grow,fill]");
  private final JComponent view;
  private final JComponent beside;

  /**
   * A pane that shows the first view alone.
   *
   * @param above the headings of the two views
   */
  public SideBySidePane(JComponent view, JComponent beside, Above above) {
    setLayout(layout);
    this.view = view;
    this.beside = beside;
    add(above.first(), "cell 0 0, wmin 0");
    add(above.second(), "cell 1 0, wmin 0");
    add(view, ALONE);
    add(beside, "cell 1 1, wmin 0");
    alone();
  }

  /** The components above two views. */
  public record Above(JComponent first, JComponent second) {}

  /** Shows the first view alone. */
  public void alone() {
    beside.setVisible(false);
    layout.setComponentConstraints(view, ALONE);
    revalidate();
  }

  /** Shows both views. */
  public void both() {
    beside.setVisible(true);
    layout.setComponentConstraints(view, HALF);
    revalidate();
  }
}
