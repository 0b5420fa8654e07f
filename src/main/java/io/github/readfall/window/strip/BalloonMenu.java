package io.github.readfall.window.strip;

import io.github.readfall.strip.edits.Alignment;
import io.github.readfall.type.balloon.ShapeKind;
import io.github.readfall.window.parts.WindowAction;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;

/** The actions on selected elements of the strip, in a menu of the window and one on the strip. */
public final class BalloonMenu {

  private final StripActions actions;
  private final LayoutActions layoutActions;
  private final Runnable toScript;

  /**
   * A menu.
   *
   * @param toScript goes to the script line of the selected element
   */
  public BalloonMenu(StripActions actions, LayoutActions layoutActions, Runnable toScript) {
    this.actions = actions;
    this.layoutActions = layoutActions;
    this.toScript = toScript;
  }

  /** The menu of the window. */
  public JMenu menu() {
    JMenu menu = new JMenu(new WindowAction("menu.balloon", () -> {}));
    menu.setName("menu.balloon");
    menu.add(
        item(
            new WindowAction("menu.nextElement", () -> actions.step(1)).stroke(KeyEvent.VK_F7, 0)));
    menu.add(
        item(
            new WindowAction("menu.previousElement", () -> actions.step(-1))
                .stroke(KeyEvent.VK_F7, InputEvent.SHIFT_DOWN_MASK)));
    menu.add(item(new WindowAction("menu.allBalloons", actions::all)));
    menu.addSeparator();
    fill(menu::add, menu::addSeparator);
    return menu;
  }

  /** The menu on the strip. */
  public JPopupMenu popup() {
    JPopupMenu popup = new JPopupMenu();
    popup.setName("balloon.popup");
    fill(popup::add, popup::addSeparator);
    return popup;
  }

  private void fill(Consumer<JComponent> menu, Runnable line) {
    menu.accept(item(new WindowAction("menu.pin", actions::pin)));
    menu.accept(shapes());
    menu.accept(new LinesMenu(actions));
    menu.accept(item(new WindowAction("menu.aim", actions::aim)));
    menu.accept(item(new WindowAction("menu.freeTail", actions::freeTails)));
    line.run();
    menu.accept(alignments());
    menu.accept(item(align(Alignment.SAME_SIZE)));
    line.run();
    menu.accept(
        item(
            new WindowAction(
                "menu.placeChosen", () -> layoutActions.placeChosen(actions.selection()))));
    menu.accept(
        item(
            new WindowAction(
                "menu.placeFrom", () -> layoutActions.placeFrom(actions.selection()))));
    menu.accept(item(new WindowAction("menu.delete", actions::drop)));
    menu.accept(item(new WindowAction("menu.chosenToScript", toScript)));
  }

  private static JMenuItem item(WindowAction action) {
    JMenuItem item = new JMenuItem(action);
    item.setName(action.key());
    return item;
  }

  private JMenu shapes() {
    JMenu menu = new JMenu(new WindowAction("menu.shape", () -> {}));
    menu.setName("menu.shape");
    menu.add(item(new WindowAction("shape.voice", () -> actions.shape(Optional.empty()))));
    for (ShapeKind shape : ShapeKind.values()) {
      menu.add(
          item(new WindowAction("shape." + shape.word(), () -> actions.shape(Optional.of(shape)))));
    }
    return menu;
  }

  private JMenu alignments() {
    JMenu menu = new JMenu(new WindowAction("menu.align", () -> {}));
    menu.setName("menu.align");
    List.of(Alignment.values()).stream()
        .filter(alignment -> alignment != Alignment.SAME_SIZE)
        .forEach(alignment -> menu.add(item(align(alignment))));
    return menu;
  }

  private WindowAction align(Alignment alignment) {
    String word = alignment.name().toLowerCase(Locale.ROOT);
    return new WindowAction("align." + word, () -> actions.align(alignment));
  }
}
