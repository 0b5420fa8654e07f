package io.github.readfall.window.workplace;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.window.parts.Notice;
import io.github.readfall.window.parts.SecondaryLabel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;

/** The start page, shown while nothing is open: actions and recent scripts. */
public final class StartView extends JPanel {

  private static final long serialVersionUID = 1;

  private static final int RECENT = 6;

  private final JPanel recent =
      new JPanel(new MigLayout("insets 0, gap 0 2, wrap 1", "[grow,fill]"));
  private final transient Consumer<Path> open;

  /**
   * A start page.
   *
   * @param actions open, new, sample: the most likely first
   * @param open opens a recent script
   */
  public StartView(List<Notice.Action> actions, Consumer<Path> open) {
    super(new MigLayout("fill", "[center]", "[center]"));
    this.open = open;
    setName("start");
    JPanel column = new JPanel(new MigLayout("insets 0, wrap 1, gap 0", "[460lp,fill]"));
    JLabel title = new JLabel(Wording.of("start.title"));
    title.putClientProperty("FlatLaf.styleClass", "h1");
    column.add(title, "gapbottom 8");
    column.add(prose(Wording.of("start.what")), "gapbottom 20");
    JPanel buttons = new JPanel(new MigLayout("insets 0, gap 10"));
    for (Notice.Action action : actions) {
      buttons.add(button(action));
    }
    column.add(buttons, "gapbottom 8");
    column.add(prose(Wording.of("start.drop")), "gapbottom 26");
    column.add(recent);
    column.add(prose(Wording.of("start.caution")), "gaptop 26");
    add(column);
  }

  private static JButton button(Notice.Action action) {
    JButton button = new JButton(action.label());
    button.setName("start." + action.label());
    button.putClientProperty("FlatLaf.style", "margin: 6,14,6,14");
    button.addActionListener(event -> action.action().run());
    return button;
  }

  /** A paragraph that wraps. */
  private static JLabel prose(String text) {
    JLabel label = new JLabel("<html><body style='width: 340px'>" + text + "</body></html>");
    SecondaryLabel.style(label);
    return label;
  }

  /** Shows the recent scripts, newest first. */
  public void show(List<Path> paths) {
    recent.removeAll();
    if (!paths.isEmpty()) {
      JLabel title = new JLabel(Wording.of("start.recent"));
      title.putClientProperty("FlatLaf.styleClass", "h4");
      recent.add(title, "gapbottom 4");
    }
    paths.stream().limit(RECENT).forEach(path -> recent.add(entry(path)));
    recent.revalidate();
    recent.repaint();
  }

  private JButton entry(Path path) {
    boolean there = Files.exists(path);
    JButton button =
        new JButton(there ? path.toString() : Wording.of("start.missing", path.toString()));
    button.setName("recent." + path);
    button.setHorizontalAlignment(SwingConstants.LEADING);
    button.putClientProperty("JButton.buttonType", "borderless");
    button.setEnabled(there);
    button.addActionListener(event -> open.accept(path));
    return button;
  }
}
