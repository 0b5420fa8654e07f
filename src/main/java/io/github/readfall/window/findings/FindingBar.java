package io.github.readfall.window.findings;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.window.parts.Listen;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/** The buttons for the selected finding: fix it, ignore it, or stop ignoring it. */
public final class FindingBar extends JPanel {

  private static final long serialVersionUID = 1;

  private static final String HIDDEN = "hidemode 3";

  private final JButton fix = new JButton(Wording.of("finding.fix"));
  private final JLabel how = new JLabel();
  private final JButton ignore = new JButton(Wording.of("finding.ignore"));
  private final JButton stopIgnoring = new JButton(Wording.of("finding.stopIgnoring"));
  private final JLabel ask = new JLabel(Wording.of("finding.reason"));
  private final JTextField reason = new JTextField();
  private transient Optional<Finding> shown = Optional.empty();
  private transient Consumer<Finding> fixListener = finding -> {};
  private transient BiConsumer<Finding, String> ignoreListener = (finding, why) -> {};
  private transient Consumer<Finding> stopIgnoringListener = finding -> {};

  FindingBar() {
    super(new MigLayout("insets 6 14 6 12, gap 8, fillx, hidemode 3", "[][grow,fill][]"));
    setName("finding.bar");
    add(fix);
    add(how, "wmin 0");
    add(ignore, HIDDEN);
    add(stopIgnoring, HIDDEN + ", wrap");
    add(ask, HIDDEN + ", split 2, span 3, growx 0");
    add(reason, HIDDEN + ", growx, wmin 0");
    fix.setName("finding.fix");
    how.setName("finding.how");
    ignore.setName("finding.ignore");
    stopIgnoring.setName("finding.stopIgnoring");
    reason.setName("finding.reason");
    ask.setLabelFor(reason);
    fix.addActionListener(event -> fix());
    ignore.addActionListener(event -> ignoreOrStop());
    stopIgnoring.addActionListener(event -> shown.ifPresent(stopIgnoringListener));
    reason.addActionListener(event -> ignore());
    Listen.toKey(reason, KeyStroke.getKeyStroke("ESCAPE"), "cancel", this::cancel);
    clear();
    updateUI();
  }

  private void cancel() {
    setAsking(false);
    ignore.requestFocusInWindow();
  }

  /** Sets the listener for findings to fix. */
  void onFix(Consumer<Finding> listener) {
    fixListener = listener;
  }

  /** Sets the listener for findings to ignore, with the reason. */
  void onIgnore(BiConsumer<Finding, String> listener) {
    ignoreListener = listener;
  }

  /** Sets the listener for findings that are no longer to be ignored. */
  void onStopIgnoring(Consumer<Finding> listener) {
    stopIgnoringListener = listener;
  }

  /**
   * Shows the buttons for a finding.
   *
   * @param fixWords what its fix does; empty if it has none
   */
  void show(Finding finding, Optional<String> fixWords) {
    boolean isSame = shown.filter(finding::equals).isPresent();
    shown = Optional.of(finding);
    fix.setEnabled(finding.isOpen() && finding.fix().isPresent());
    how.setText(fixWords.filter(words -> finding.isOpen()).orElse(noFix(finding)));
    ignore.setVisible(finding.isOpen());
    stopIgnoring.setVisible(!finding.isOpen());
    if (!isSame) {
      setAsking(false);
    }
    setVisible(true);
  }

  private static String noFix(Finding finding) {
    return finding
        .reason()
        .map(why -> Wording.of("finding.ignored", why))
        .orElse(Wording.of("finding.noFix"));
  }

  /** Hides the buttons. */
  void clear() {
    shown = Optional.empty();
    setAsking(false);
    setVisible(false);
  }

  /** Fixes the finding that is shown, if there is an automatic fix. */
  public void fix() {
    if (fix.isEnabled()) {
      shown.ifPresent(fixListener);
    }
  }

  /** Asks for a reason to ignore the finding that is shown, or stops ignoring it. */
  public void ignoreOrStop() {
    if (shown.filter(finding -> !finding.isOpen()).isPresent()) {
      shown.ifPresent(stopIgnoringListener);
    } else if (shown.isPresent()) {
      setAsking(true);
      reason.setText("");
      reason.requestFocusInWindow();
    }
  }

  private void setAsking(boolean isAsking) {
    ask.setVisible(isAsking);
    reason.setVisible(isAsking);
    revalidate();
  }

  private void ignore() {
    String why = reason.getText().strip();
    if (!why.isEmpty()) {
      setAsking(false);
      shown.ifPresent(finding -> ignoreListener.accept(finding, why));
    }
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setBorder(BorderFactory.createMatteBorder(0, 0, 1, 0, UIManager.getColor("Readfall.line")));
  }
}
