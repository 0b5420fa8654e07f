package io.github.readfall.window.parts;

import java.awt.Component;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/**
 * The line above a part of the window: its title, and its controls on the right, or below it if
 * there is no room for both.
 */
public final class Heading extends JPanel {

  private static final long serialVersionUID = 1;

  private static final int GAP_PX = 6;
  private static final String SHRINKS = "wmin 0";
  private static final String IN_A_NEW_ROW = "newline, wmin 0";
  private static final String BELOW = "newline, span 2, wmin 0";

  private final JLabel title = new JLabel();
  private final MigLayout row =
      new MigLayout("insets 0, gap 6 2, hidemode 3, nogrid, novisualpadding");
  private final JPanel controls = new JPanel(row);
  private final MigLayout layout = new MigLayout("insets 7 14 7 12, gap 6 4, fillx", "[][right]");
  private transient List<Component> rowStarts = List.of();
  private boolean isNarrow;

  public Heading(String words, JComponent... settings) {
    setLayout(layout);
    title.setText(words);
    title.putClientProperty("FlatLaf.styleClass", "h4");
    add(title, "wmin 0, pushx, hmin 24lp");
    for (JComponent control : settings) {
      controls.add(control, SHRINKS);
    }
    add(controls, SHRINKS);
    updateUI();
  }

  /** Shows another title. */
  public void setTitle(String words) {
    title.setText(words);
  }

  /** Makes the title the label of a control, for screen readers. */
  public void setLabelFor(JComponent control) {
    title.setLabelFor(control);
  }

  @Override
  public void setBounds(int x, int y, int width, int height) {
    super.setBounds(x, y, width, height);
    int roomPx = width - 2 * title.getFont().getSize();
    List<Component> starts = foldedTo(roomPx);
    int besidePx = title.getPreferredSize().width + widthOf(controls.getComponents());
    boolean narrow = besidePx > roomPx;
    if (width > 0 && (narrow != isNarrow || !starts.equals(rowStarts))) {
      isNarrow = narrow;
      rowStarts = starts;
      layout.setComponentConstraints(controls, narrow ? BELOW : SHRINKS);
      for (Component control : controls.getComponents()) {
        row.setComponentConstraints(control, starts.contains(control) ? IN_A_NEW_ROW : SHRINKS);
      }
      SwingUtilities.invokeLater(controls::revalidate); // its parents are being laid out now
    }
  }

  private static int widthOf(Component... shown) {
    return Arrays.stream(shown)
        .filter(Component::isVisible)
        .mapToInt(one -> one.getPreferredSize().width + GAP_PX)
        .sum();
  }

  /** The controls that begin a new row if there is only so much room. */
  private List<Component> foldedTo(int roomPx) {
    List<Component> starts = new ArrayList<>();
    int usedPx = 0;
    for (Component control : controls.getComponents()) {
      int wantedPx = widthOf(control);
      if (usedPx > 0 && usedPx + wantedPx > roomPx) {
        starts.add(control);
        usedPx = 0;
      }
      usedPx += wantedPx;
    }
    return starts;
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setBorder(BorderFactory.createMatteBorder(0, 0, 1, 0, UIManager.getColor("Readfall.line")));
  }
}
