package io.github.readfall.window;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.window.findings.FindingsView;
import io.github.readfall.window.languages.MatrixView;
import io.github.readfall.window.parts.Focus;
import io.github.readfall.window.phone.ReadersView;
import java.awt.CardLayout;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/**
 * The pane below script and strip: findings, the table of readers or, if there are translations,
 * the table of languages.
 */
final class LowerPane extends JPanel {

  private static final long serialVersionUID = 1;

  private static final String FINDINGS = "findings";
  private static final String MATRIX = "matrix";
  private static final String READERS = "readers";

  private final CardLayout cards = new CardLayout();
  private final List<JToggleButton> toMatrix = new ArrayList<>();
  private final FindingsView findings = new FindingsView(switches(FINDINGS));
  private final MatrixView matrix = new MatrixView(switches(MATRIX));
  private final ReadersView readers = new ReadersView(switches(READERS));

  LowerPane() {
    setLayout(cards);
    add(findings, FINDINGS);
    add(matrix, MATRIX);
    add(readers, READERS);
    offer(false);
  }

  /** A row of buttons, one for each view, with one of them switched on. */
  private JPanel switches(String shown) {
    JPanel row = new JPanel(new MigLayout("insets 0, gap 2, novisualpadding, hidemode 3"));
    for (String card : List.of(FINDINGS, READERS, MATRIX)) {
      JToggleButton button = new JToggleButton(Wording.of("lower." + card));
      button.setName("lower." + shown + "." + card);
      button.putClientProperty("JButton.buttonType", "toolBarButton");
      button.setSelected(card.equals(shown));
      button.addActionListener(
          event -> {
            show(card);
            button.setSelected(
                card.equals(
                    shown)); // clicking switches it: keep the state that belongs to this view
          });
      row.add(button);
      if (card.equals(MATRIX)) {
        toMatrix.add(button);
      }
    }
    return row;
  }

  private void show(String card) {
    cards.show(this, card);
    switch (card) {
      case MATRIX -> matrix.focusTable();
      case READERS -> readers.focusTable();
      default -> Focus.into(findings);
    }
  }

  /** Shows or hides the button of the table of languages. */
  void offer(boolean hasLanguages) {
    toMatrix.forEach(button -> button.setVisible(hasLanguages));
    if (!hasLanguages && matrix.isVisible()) {
      cards.show(this, FINDINGS);
    }
  }

  /** Shows the findings, and moves the focus there. */
  void showFindings() {
    show(FINDINGS);
  }

  /** Shows the table of languages, and moves the focus there. */
  void showMatrix() {
    show(MATRIX);
  }

  /** Shows the table of readers, and moves the focus there. */
  void showReaders() {
    show(READERS);
  }

  FindingsView findings() {
    return findings;
  }

  MatrixView matrix() {
    return matrix;
  }

  ReadersView readers() {
    return readers;
  }
}
