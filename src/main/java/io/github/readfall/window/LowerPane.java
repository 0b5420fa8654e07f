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
 * What lies below script and strip: what was found, how its smallest letters are seen, or, where
 * there are translations, how every cue goes in in every language.
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

  /** The names of what can be seen here, one of them switched on. */
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
            button.setSelected(card.equals(shown)); // the next time it is the other view's again
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

  /** Offers the matrix, or no more. */
  void offer(boolean hasLanguages) {
    toMatrix.forEach(button -> button.setVisible(hasLanguages));
    if (!hasLanguages && matrix.isVisible()) {
      cards.show(this, FINDINGS);
    }
  }

  /** Shows what was found, and gives it the keyboard. */
  void showFindings() {
    show(FINDINGS);
  }

  /** Shows the matrix, and gives it the keyboard. */
  void showMatrix() {
    show(MATRIX);
  }

  /** Shows how its smallest letters are seen, and gives the table the keyboard. */
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
