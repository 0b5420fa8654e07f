package io.github.readfall.app;

import io.github.readfall.wording.Wording;
import java.awt.CardLayout;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/**
 * What lies below script and strip: what was found, or, where there are translations, how every cue
 * goes in in every language.
 */
final class BelowPane extends JPanel {

  private static final long serialVersionUID = 1;

  private static final String FINDINGS = "findings";
  private static final String MATRIX = "matrix";

  private final CardLayout cards = new CardLayout();
  private final FindingsView findings = new FindingsView(switches(FINDINGS));
  private final MatrixView matrix = new MatrixView(switches(MATRIX));

  BelowPane() {
    setLayout(cards);
    add(findings, FINDINGS);
    add(matrix, MATRIX);
    offer(false);
  }

  /** The two names of what can be seen here, one of them switched on. */
  private JPanel switches(String shown) {
    JPanel pair = new JPanel(new MigLayout("insets 0, gap 2, novisualpadding"));
    for (String card : List.of(FINDINGS, MATRIX)) {
      JToggleButton button = new JToggleButton(Wording.of("below." + card));
      button.setName("below." + shown + "." + card);
      button.putClientProperty("JButton.buttonType", "toolBarButton");
      button.setSelected(card.equals(shown));
      button.addActionListener(
          event -> {
            show(card);
            button.setSelected(card.equals(shown)); // the next time it is the other view's again
          });
      pair.add(button);
    }
    return pair;
  }

  private void show(String card) {
    cards.show(this, card);
    if (card.equals(MATRIX)) {
      matrix.focusTable();
    } else {
      Focus.into(findings);
    }
  }

  /** Offers the matrix, or no more. */
  void offer(boolean isThereAny) {
    findings.offerSwitch(isThereAny);
    if (!isThereAny) {
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

  FindingsView findings() {
    return findings;
  }

  MatrixView matrix() {
    return matrix;
  }
}
