package io.github.readfall.window.parts;

import io.github.readfall.base.wording.Wording;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/** Notices at the top of the window, each a sentence with buttons; the work goes on meanwhile. */
public final class NoticeBar extends JPanel {

  private static final long serialVersionUID = 1;

  private final transient List<Notice> notices = new ArrayList<>();

  public NoticeBar() {
    super(new MigLayout("insets 0, gap 0, fillx, wrap 1, hidemode 3", "[grow,fill]"));
    setName("notices");
    setVisible(false);
  }

  /** Shows a notice in place of any other with its topic. */
  public void show(Notice notice) {
    notices.removeIf(other -> other.topic().equals(notice.topic()));
    notices.add(notice);
    refresh();
  }

  /** Closes the notice with a topic. */
  public void close(String topic) {
    if (notices.removeIf(other -> other.topic().equals(topic))) {
      refresh();
    }
  }

  /** Closes all notices. */
  public void clear() {
    notices.clear();
    refresh();
  }

  /** The notices shown, oldest first. */
  public List<Notice> notices() {
    return List.copyOf(notices);
  }

  private void refresh() {
    removeAll();
    notices.forEach(notice -> add(row(notice)));
    setVisible(!notices.isEmpty());
    revalidate();
    repaint();
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (notices != null) { // the superclass calls this before the fields are set
      refresh();
    }
  }

  private JPanel row(Notice notice) {
    JPanel row = new JPanel(new MigLayout("insets 8 14 8 10, fillx", "[grow,fill]8[]"));
    row.setName("notice." + notice.topic());
    row.putClientProperty("FlatLaf.style", "background: $Readfall.notice");
    Color line = UIManager.getColor("Readfall.line");
    row.setBorder(BorderFactory.createMatteBorder(0, 0, 1, 0, line));
    row.add(sentence(notice), "wmin 0");
    JPanel buttons = new JPanel(new MigLayout("insets 0, gap 8"));
    buttons.setOpaque(false);
    for (Notice.Action action : notice.actions()) {
      buttons.add(button(action.label(), () -> run(notice, action)));
    }
    buttons.add(button(Wording.of("notice.close"), () -> close(notice.topic())));
    row.add(buttons);
    return row;
  }

  private void run(Notice notice, Notice.Action chosen) {
    close(notice.topic());
    chosen.action().run();
  }

  private static WrappedLabel sentence(Notice notice) {
    WrappedLabel text = new WrappedLabel("notice.words", "Label.foreground");
    text.showText(notice.sentence());
    text.setFocusable(true); // so that the sentence can be copied
    return text;
  }

  private static JButton button(String label, Runnable action) {
    JButton button = new JButton(label);
    button.setName("action." + label);
    button.addActionListener(event -> action.run());
    return button;
  }
}
