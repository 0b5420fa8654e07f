package io.github.readfall.window.script;

import io.github.readfall.base.wording.Wording;
import javax.swing.Action;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.event.PopupMenuEvent;
import javax.swing.event.PopupMenuListener;
import javax.swing.text.DefaultEditorKit;

/** The context menu of the text. */
final class EditMenu extends JPopupMenu {

  private static final long serialVersionUID = 1;

  private final ScriptArea area;
  private final JMenuItem undo = new JMenuItem(Wording.of("editor.undo"));
  private final JMenuItem redo = new JMenuItem(Wording.of("editor.redo"));
  private final JMenuItem cut = item("editor.cut", DefaultEditorKit.cutAction);
  private final JMenuItem copy = item("editor.copy", DefaultEditorKit.copyAction);

  EditMenu(ScriptArea area) {
    this.area = area;
    setName("edit menu");
    undo.addActionListener(e -> area.script().undo());
    redo.addActionListener(e -> area.script().redo());
    add(undo);
    add(redo);
    addSeparator();
    add(cut);
    add(copy);
    add(item("editor.paste", DefaultEditorKit.pasteAction));
    add(item("editor.selectAll", DefaultEditorKit.selectAllAction));
    addPopupMenuListener(new Opened());
  }

  /** An item that acts on the text with the focus, which is the script while the menu is open. */
  private static JMenuItem item(String words, String action) {
    JMenuItem item = new JMenuItem(Wording.of(words));
    for (Action known : new DefaultEditorKit().getActions()) {
      if (action.equals(known.getValue(Action.NAME))) {
        item.addActionListener(known);
      }
    }
    return item;
  }

  private void refresh() {
    boolean selected = area.getSelectionStart() != area.getSelectionEnd();
    undo.setEnabled(area.script().history().canUndo());
    redo.setEnabled(area.script().history().canRedo());
    cut.setEnabled(selected);
    copy.setEnabled(selected);
  }

  private final class Opened implements PopupMenuListener {

    @Override
    public void popupMenuWillBecomeVisible(PopupMenuEvent event) {
      refresh();
    }

    @Override
    public void popupMenuWillBecomeInvisible(PopupMenuEvent event) {}

    @Override
    public void popupMenuCanceled(PopupMenuEvent event) {}
  }
}
