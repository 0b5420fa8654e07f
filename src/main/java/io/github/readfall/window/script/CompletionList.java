package io.github.readfall.window.script;

import io.github.readfall.base.wording.Wording;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JList;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import javax.swing.LookAndFeel;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;

/** A list of completions below the caret; the text keeps the focus. */
final class CompletionList {

  private static final int MOST_ROWS = 9;

  private final ScriptArea area;
  private final Consumer<Suggestion> chosen;
  private LookAndFeel theme = UIManager.getLookAndFeel();
  private final JList<Suggestion> list = new JList<>();
  private final JPopupMenu popup = new JPopupMenu();
  private final JScrollPane scroll = new JScrollPane(list);

  CompletionList(ScriptArea area, Consumer<Suggestion> chosen) {
    this.area = area;
    this.chosen = chosen;
    list.setName("completions");
    list.getAccessibleContext().setAccessibleName(Wording.of("editor.completions"));
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setFocusable(false);
    list.setCellRenderer(new Cell());
    list.addMouseListener(new Clicked());
    scroll.setBorder(BorderFactory.createEmptyBorder());
    popup.setFocusable(false);
    popup.setName("completions popup");
    popup.add(scroll);
    area.addKeyListener(new Keys());
  }

  /** A name with margins on both sides, and as clearly selected as if the list had the focus. */
  private static final class Cell extends DefaultListCellRenderer {

    private static final long serialVersionUID = 1;

    @Override
    public Component getListCellRendererComponent(
        JList<?> in, Object value, int index, boolean selected, boolean focused) {
      super.getListCellRendererComponent(in, value, index, selected, focused);
      if (selected) {
        setBackground(UIManager.getColor("List.selectionBackground"));
        setForeground(UIManager.getColor("List.selectionForeground"));
      }
      int air = in.getFont().getSize() / 4;
      setBorder(BorderFactory.createEmptyBorder(air, air * 2, air, air * 4));
      return this;
    }
  }

  private final class Clicked extends MouseAdapter {

    @Override
    public void mouseClicked(MouseEvent event) {
      choose();
    }
  }

  /** Takes Up, Down, Enter, Tab and Escape while the list is open. */
  private final class Keys extends KeyAdapter {

    @Override
    public void keyPressed(KeyEvent event) {
      if (isOpen() && !event.isControlDown() && !event.isAltDown() && !event.isMetaDown()) {
        take(event);
      }
    }

    private void take(KeyEvent event) {
      switch (event.getKeyCode()) {
        case KeyEvent.VK_UP -> move(-1);
        case KeyEvent.VK_DOWN -> move(1);
        case KeyEvent.VK_PAGE_UP -> move(-MOST_ROWS);
        case KeyEvent.VK_PAGE_DOWN -> move(MOST_ROWS);
        case KeyEvent.VK_ENTER, KeyEvent.VK_TAB -> choose();
        case KeyEvent.VK_ESCAPE -> close();
        default -> {
          return;
        }
      }
      event.consume();
    }
  }

  boolean isOpen() {
    return popup.isVisible();
  }

  /** The labels that are offered now. */
  List<String> offered() {
    return IntStream.range(0, list.getModel().getSize())
        .mapToObj(i -> list.getModel().getElementAt(i).label())
        .toList();
  }

  void close() {
    popup.setVisible(false);
  }

  /**
   * Offers suggestions; closes the list if there are none.
   *
   * @param offset the start of the typed text that they complete
   */
  void offer(List<Suggestion> suggestions, int offset) {
    if (suggestions.isEmpty()) {
      close();
      return;
    }
    followTheme();
    list.setFont(area.getFont());
    list.setListData(suggestions.toArray(new Suggestion[0]));
    list.setSelectedIndex(0);
    list.setVisibleRowCount(Math.min(MOST_ROWS, suggestions.size()));
    Dimension size = list.getPreferredScrollableViewportSize();
    scroll.setPreferredSize(
        new Dimension(
            Math.max(
                size.width + scroll.getVerticalScrollBar().getPreferredSize().width,
                area.getFont().getSize() * 10),
            size.height));
    area.boxAt(offset).ifPresent(this::open);
  }

  /**
   * Updates the theme: while the list is closed it is in no window, so a change does not reach it.
   */
  private void followTheme() {
    if (!UIManager.getLookAndFeel().equals(theme)) {
      theme = UIManager.getLookAndFeel();
      SwingUtilities.updateComponentTreeUI(popup);
      scroll.setBorder(BorderFactory.createEmptyBorder());
    }
  }

  private void open(Rectangle2D caret) {
    int air = list.getFont().getSize() / 2; // so that names are below the typed part of them
    Point at = new Point(Math.max(0, (int) caret.getX() - air), (int) caret.getMaxY() + 2);
    popup.pack();
    if (area.isShowing()) {
      popup.show(area, at.x, at.y);
      area.requestFocusInWindow();
    }
  }

  private void move(int by) {
    int to = Math.max(0, Math.min(list.getModel().getSize() - 1, list.getSelectedIndex() + by));
    list.setSelectedIndex(to);
    list.ensureIndexIsVisible(to);
  }

  private void choose() {
    Suggestion suggestion = list.getSelectedValue();
    close();
    if (suggestion != null) {
      chosen.accept(suggestion);
    }
  }
}
