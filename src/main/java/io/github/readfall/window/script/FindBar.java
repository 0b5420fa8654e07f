package io.github.readfall.window.script;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.window.parts.Listen;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;

/** A bar to find words in the script, and to replace them. */
final class FindBar extends JPanel {

  private static final long serialVersionUID = 1;
  private static final int COLUMNS = 18;
  private static final int GAP_EM = 1;

  private final ScriptArea area;
  private final JTextField wanted = field("editor.find.wanted", "find wanted");
  private final JTextField instead = field("editor.find.instead", "find instead");
  private final JCheckBox matchCase = check("editor.find.case", "find case");
  private final JCheckBox wholeWords = check("editor.find.words", "find words");
  private final JLabel result = new JLabel(" ");

  FindBar(ScriptArea area) {
    super(new GridBagLayout());
    this.area = area;
    setName("find bar");
    setVisible(false);
    result.setName("find result");
    wanted.addActionListener(e -> go(true));
    instead.addActionListener(e -> replace());
    Listen.toText(wanted, this::look);
    matchCase.addActionListener(e -> look());
    wholeWords.addActionListener(e -> look());
    lay();
    bind(KeyEvent.VK_ESCAPE, 0, "close", this::leave);
    bind(KeyEvent.VK_ENTER, KeyEvent.SHIFT_DOWN_MASK, "previous", () -> go(false));
  }

  private void lay() {
    int air = getFont().getSize() / 2;
    setBorder(BorderFactory.createEmptyBorder(air, air * 2, air, air * 2));
    add(label("editor.find.wanted", wanted), at(0, 0));
    add(wanted, wide(1, 0));
    add(button("editor.find.next", "find next", () -> go(true)), at(2, 0));
    add(button("editor.find.previous", "find previous", () -> go(false)), at(3, 0));
    add(button("editor.find.close", "find close", this::leave), at(4, 0));
    add(label("editor.find.instead", instead), at(0, 1));
    add(instead, wide(1, 1));
    add(button("editor.find.replace", "find replace", this::replace), at(2, 1));
    add(button("editor.find.replaceAll", "find replace all", this::replaceAll), at(3, 1));
    GridBagConstraints rest = wide(1, 2);
    rest.gridwidth = GridBagConstraints.REMAINDER;
    add(choices(), rest);
  }

  private JComponent choices() {
    Box box = Box.createHorizontalBox();
    box.add(matchCase);
    box.add(Box.createHorizontalStrut(getFont().getSize() * GAP_EM));
    box.add(wholeWords);
    box.add(Box.createHorizontalStrut(getFont().getSize() * GAP_EM));
    box.add(result);
    return box;
  }

  private GridBagConstraints at(int column, int row) {
    int air = getFont().getSize() / 4;
    return new GridBagConstraints(
        column,
        row,
        1,
        1,
        0,
        0,
        GridBagConstraints.LINE_START,
        GridBagConstraints.HORIZONTAL,
        new Insets(air, air, air, air),
        0,
        0);
  }

  private GridBagConstraints wide(int column, int row) {
    GridBagConstraints wide = at(column, row);
    wide.weightx = 1;
    return wide;
  }

  private static JTextField field(String words, String name) {
    JTextField field = new JTextField(COLUMNS);
    field.setName(name);
    field.getAccessibleContext().setAccessibleName(Wording.of(words));
    return field;
  }

  private static JCheckBox check(String words, String name) {
    JCheckBox box = new JCheckBox(Wording.of(words));
    box.setName(name);
    return box;
  }

  private static JLabel label(String words, JTextField field) {
    JLabel label = new JLabel(Wording.of(words));
    label.setLabelFor(field);
    return label;
  }

  private static JButton button(String words, String name, Runnable action) {
    JButton button = new JButton(Wording.of(words));
    button.setName(name);
    button.addActionListener(e -> action.run());
    return button;
  }

  private void bind(int key, int modifiers, String name, Runnable action) {
    Listen.toKey(
        this,
        WHEN_ANCESTOR_OF_FOCUSED_COMPONENT,
        KeyStroke.getKeyStroke(key, modifiers),
        name,
        action);
  }

  /** Opens with the selected text, if that is on one line. */
  void open() {
    String selected = area.getSelectedText();
    if (selected != null && !selected.isEmpty() && selected.indexOf('\n') < 0) {
      wanted.setText(selected);
    }
    setVisible(true);
    look();
    wanted.selectAll();
    wanted.requestFocusInWindow();
  }

  private void leave() {
    setVisible(false);
    area.mark(List.of());
    area.requestFocusInWindow();
  }

  private TextSearch search() {
    return new TextSearch(wanted.getText(), matchCase.isSelected(), wholeWords.isSelected());
  }

  private List<TextRange> found() {
    return search().in(area.script().text());
  }

  /** Marks and counts the matches again after the text or the search has changed. */
  void look() {
    if (!isVisible()) {
      return;
    }
    List<TextRange> found = found();
    area.mark(found);
    say(found);
  }

  private void say(List<TextRange> found) {
    if (wanted.getText().isEmpty()) {
      say(Wording.of("editor.find.start"));
    } else if (found.isEmpty()) {
      say(Wording.of("editor.find.nothing"));
    } else {
      int at = found.indexOf(selection());
      say(
          at >= 0
              ? Wording.of("editor.find.at", at + 1, found.size())
              : Wording.of("editor.find.count", found.size()));
    }
  }

  private void say(String sentence) {
    result.setText(sentence);
    result.getAccessibleContext().setAccessibleName(sentence);
  }

  private TextRange selection() {
    return new TextRange(area.getSelectionStart(), area.getSelectionEnd());
  }

  /** Goes to the next match, or to the previous one; from the last on to the first. */
  void go(boolean forward) {
    if (!isVisible()) {
      open();
    }
    List<TextRange> found = found();
    if (!found.isEmpty()) {
      TextRange next = forward ? after(found) : before(found);
      area.goTo(next.end());
      area.select(next.start(), next.end());
    }
    area.mark(found);
    say(found);
  }

  private TextRange after(List<TextRange> found) {
    return found.stream()
        .filter(range -> range.start() >= selection().end())
        .findFirst()
        .orElseGet(() -> found.get(0));
  }

  private TextRange before(List<TextRange> found) {
    return found.stream()
        .filter(range -> range.end() <= selection().start())
        .reduce((earlier, later) -> later)
        .orElseGet(() -> found.get(found.size() - 1));
  }

  /** Replaces the selected match and goes on to the next. */
  private void replace() {
    TextRange selected = selection();
    if (found().contains(selected)) {
      area.script().put(selected.start(), selected.end(), instead.getText());
      area.setCaretPosition(selected.start() + instead.getText().length());
    }
    go(true);
  }

  private void replaceAll() {
    int count = found().size();
    if (count > 0) {
      area.script().become(search().replacedIn(area.script().text(), instead.getText()));
    }
    look();
    say(count == 0 ? Wording.of("editor.find.nothing") : Wording.of("editor.find.replaced", count));
  }
}
