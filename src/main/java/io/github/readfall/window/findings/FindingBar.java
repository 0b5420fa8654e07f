package io.github.readfall.window.findings;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.wording.Wording;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/**
 * What can be done about the finding that is chosen: mend it, set it aside, or take it up again.
 */
public final class FindingBar extends JPanel {

  private static final long serialVersionUID = 1;

  private static final String HIDDEN = "hidemode 3";

  private final JButton mend = new JButton(Wording.of("finding.fix"));
  private final JLabel how = new JLabel();
  private final JButton aside = new JButton(Wording.of("finding.ignore"));
  private final JButton again = new JButton(Wording.of("finding.stopIgnoring"));
  private final JLabel ask = new JLabel(Wording.of("finding.reason"));
  private final JTextField reason = new JTextField();
  private transient Optional<Finding> shown = Optional.empty();
  private transient Consumer<Finding> mended = finding -> {};
  private transient BiConsumer<Finding, String> setAside = (finding, why) -> {};
  private transient Consumer<Finding> takenUp = finding -> {};

  FindingBar() {
    super(new MigLayout("insets 6 14 6 12, gap 8, fillx, hidemode 3", "[][grow,fill][]"));
    setName("finding.bar");
    add(mend);
    add(how, "wmin 0");
    add(aside, HIDDEN);
    add(again, HIDDEN + ", wrap");
    add(ask, HIDDEN + ", split 2, span 3, growx 0");
    add(reason, HIDDEN + ", growx, wmin 0");
    mend.setName("finding.fix");
    how.setName("finding.how");
    aside.setName("finding.ignore");
    again.setName("finding.stopIgnoring");
    reason.setName("finding.reason");
    ask.setLabelFor(reason);
    mend.addActionListener(event -> mend());
    aside.addActionListener(event -> askWhy());
    again.addActionListener(event -> shown.ifPresent(takenUp));
    reason.addActionListener(event -> setAside());
    reason.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), "leave");
    reason.getActionMap().put("leave", new Leaving());
    clear();
    updateUI();
  }

  private final class Leaving extends AbstractAction {
    private static final long serialVersionUID = 1;

    @Override
    public void actionPerformed(ActionEvent event) {
      asking(false);
      aside.requestFocusInWindow();
    }
  }

  /** Hears which finding is to be mended. */
  void onMend(Consumer<Finding> listener) {
    mended = listener;
  }

  /** Hears which finding is to be set aside, and why. */
  void onSetAside(BiConsumer<Finding, String> listener) {
    setAside = listener;
  }

  /** Hears which finding is to be looked at again. */
  void onTakenUp(Consumer<Finding> listener) {
    takenUp = listener;
  }

  /** Offers what can be done about a finding. */
  void show(Finding finding) {
    boolean same = shown.filter(finding::equals).isPresent();
    shown = Optional.of(finding);
    mend.setEnabled(finding.isOpen() && finding.mend().isPresent());
    how.setText(
        finding.mend().filter(one -> finding.isOpen()).map(Fix::sentence).orElse(noMend(finding)));
    aside.setVisible(finding.isOpen());
    again.setVisible(!finding.isOpen());
    if (!same) {
      asking(false);
    }
    setVisible(true);
  }

  private static String noMend(Finding finding) {
    return finding
        .reason()
        .map(why -> Wording.of("finding.ignored", why))
        .orElse(Wording.of("finding.noFix"));
  }

  /** Offers nothing. */
  void clear() {
    shown = Optional.empty();
    asking(false);
    setVisible(false);
  }

  /** Mends the finding that is shown, where that can be done. */
  public void mend() {
    if (mend.isEnabled()) {
      shown.ifPresent(mended);
    }
  }

  /** Asks why the finding that is shown may stay, or takes it up again where it is set aside. */
  public void askWhy() {
    if (shown.filter(finding -> !finding.isOpen()).isPresent()) {
      shown.ifPresent(takenUp);
    } else if (shown.isPresent()) {
      asking(true);
      reason.setText("");
      reason.requestFocusInWindow();
    }
  }

  private void asking(boolean isAsking) {
    ask.setVisible(isAsking);
    reason.setVisible(isAsking);
    revalidate();
  }

  private void setAside() {
    String why = reason.getText().strip();
    if (!why.isEmpty()) {
      asking(false);
      shown.ifPresent(finding -> setAside.accept(finding, why));
    }
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setBorder(BorderFactory.createMatteBorder(0, 0, 1, 0, UIManager.getColor("Readfall.line")));
  }
}
