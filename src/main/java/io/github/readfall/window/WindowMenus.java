package io.github.readfall.window;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.draw.Layer;
import io.github.readfall.series.autosave.ThemeChoice;
import io.github.readfall.window.findings.FindingsView;
import io.github.readfall.window.help.HelpDialog;
import io.github.readfall.window.languages.LanguageMenu;
import io.github.readfall.window.parts.Focus;
import io.github.readfall.window.parts.Theme;
import io.github.readfall.window.parts.WindowAction;
import io.github.readfall.window.strip.StripColumn;
import io.github.readfall.window.strip.StripKeys;
import io.github.readfall.window.workplace.SavedWindowState;
import java.awt.Container;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;

/** The menu bar of the window. */
final class WindowMenus {

  private static final double ZOOM_STEP = 1.25;

  private final MainWindow window;
  private final WorkView work;
  private final SavedWindowState state;
  private final LanguageViews languages;
  private final JMenuBar bar = new JMenuBar();

  WindowMenus(MainWindow window, WorkView work, SavedWindowState state, LanguageViews languages) {
    this.window = window;
    this.work = work;
    this.state = state;
    this.languages = languages;
    episode();
    edit();
    script();
    strip();
    bar.add(window.stripController().menu());
    phone();
    findings();
    window();
    help();
  }

  private void help() {
    Runnable open = () -> HelpDialog.open(window.frame());
    bar.add(menu("menu.helpMenu", new WindowAction("menu.help", open).stroke(KeyEvent.VK_F1, 0)));
  }

  JMenuBar bar() {
    return bar;
  }

  private JMenu menu(String key, WindowAction... actions) {
    JMenu menu = new JMenu(new WindowAction(key, () -> {}));
    menu.setName(key);
    for (WindowAction action : actions) {
      menu.add(item(action));
    }
    return menu;
  }

  private static JMenuItem item(WindowAction action) {
    JMenuItem item = new JMenuItem(action);
    item.setName(action.key());
    return item;
  }

  private void episode() {
    JMenu menu = menu("menu.episode");
    menu.add(item(new WindowAction("menu.open", window::choose).menuKey(KeyEvent.VK_O)));
    menu.add(recent());
    menu.addSeparator();
    menu.add(item(new WindowAction("menu.newSeries", window::newSeries)));
    menu.add(item(new WindowAction("menu.newEpisode", window::newEpisode).menuKey(KeyEvent.VK_N)));
    menu.add(item(new WindowAction("menu.sample", window::sample)));
    menu.addSeparator();
    menu.add(item(new WindowAction("menu.save", window::save).menuKey(KeyEvent.VK_S)));
    menu.add(item(new WindowAction("menu.export", window::export).menuKey(KeyEvent.VK_E)));
    menu.add(item(new WindowAction("menu.close", window::closeEpisode).menuKey(KeyEvent.VK_W)));
    menu.addSeparator();
    menu.add(item(new WindowAction("menu.leave", window::leave).menuKey(KeyEvent.VK_Q)));
    bar.add(menu);
  }

  /** The recent scripts, listed when the menu is opened. */
  private JMenu recent() {
    JMenu menu = menu("menu.recent");
    menu.addMenuListener(
        new MenuListener() {
          @Override
          public void menuSelected(MenuEvent event) {
            menu.removeAll();
            state.now().recent().forEach(path -> menu.add(entry(path)));
          }

          @Override
          public void menuDeselected(MenuEvent event) {
            // it is filled again when it is opened
          }

          @Override
          public void menuCanceled(MenuEvent event) {
            // it is filled again when it is opened
          }
        });
    return menu;
  }

  private JMenuItem entry(Path path) {
    boolean there = Files.exists(path);
    String shown = path.toString();
    JMenuItem item = new JMenuItem(there ? shown : Wording.of("start.missing", shown));
    item.setEnabled(there);
    item.addActionListener(event -> window.open(path));
    return item;
  }

  private void edit() {
    WindowAction undo = new WindowAction("menu.undo", work.editor()::undo).menuKey(KeyEvent.VK_Z);
    WindowAction redo =
        new WindowAction("menu.redo", work.editor()::redo).shiftMenuKey(KeyEvent.VK_Z);
    Runnable name =
        () -> {
          undo.names("menu.undo", "menu.undoThis", work.editor().undoName());
          redo.names("menu.redo", "menu.redoThis", work.editor().redoName());
        };
    work.editor().onUndoChange(name);
    name.run();
    bar.add(menu("menu.edit", undo, redo));
  }

  private void script() {
    JMenu menu = menu("menu.script");
    menu.add(item(new WindowAction("menu.find", work.editor()::find).menuKey(KeyEvent.VK_F)));
    menu.addSeparator();
    menu.add(item(part("menu.toScript", KeyEvent.VK_1, work.editor())));
    menu.add(
        item(
            new WindowAction("menu.toTranslation", work.scriptColumn().translation()::focusWords)
                .menuKey(KeyEvent.VK_5)));
    bar.add(menu);
  }

  /** An action that moves the focus to a part of the window. */
  private static WindowAction part(String key, int keyCode, Container part) {
    return new WindowAction(key, () -> Focus.into(part)).menuKey(keyCode);
  }

  private void strip() {
    StripColumn column = work.stripColumn();
    JMenu menu =
        menu(
            "menu.strip",
            new WindowAction("menu.panels", window.layoutActions()::findPanels),
            new WindowAction("menu.place", window.layoutActions()::placeAll),
            new WindowAction("menu.placeWithRoom", window.layoutActions()::placeWithRoom));
    menu.addSeparator();
    List.of(
            new WindowAction("menu.drawPanel", window.stripController()::drawPanel),
            new WindowAction("menu.drawArea", window.stripController()::drawArea),
            new WindowAction("menu.drawMouth", window.stripController()::drawMouth),
            new WindowAction("menu.openGutter", () -> gutter(StripKeys.GUTTER_PX)),
            new WindowAction("menu.closeGutter", () -> gutter(-StripKeys.GUTTER_PX)))
        .forEach(action -> menu.add(item(action)));
    menu.addSeparator();
    List.of(
            new WindowAction("menu.fit", column::fitWidth).menuKey(KeyEvent.VK_0),
            new WindowAction("menu.actual", column::actualPixels),
            new WindowAction("menu.phoneSize", column::phoneSize),
            new WindowAction("menu.zoomIn", () -> column.zoomBy(ZOOM_STEP))
                .menuKey(KeyEvent.VK_PLUS),
            new WindowAction("menu.zoomOut", () -> column.zoomBy(1 / ZOOM_STEP))
                .menuKey(KeyEvent.VK_MINUS))
        .forEach(action -> menu.add(item(action)));
    menu.addSeparator();
    for (Layer layer : StripColumn.SWITCHED) {
      menu.add(column.menuItem(layer));
    }
    menu.addSeparator();
    menu.add(new LanguageMenu(new WindowAction("menu.language", () -> {}), column.languages()));
    menu.add(new LanguageMenu(new WindowAction("menu.beside", () -> {}), column.otherLanguages()));
    menu.add(
        item(new WindowAction("menu.nextLanguage", languages::showNext).menuKey(KeyEvent.VK_L)));
    menu.addSeparator();
    menu.add(item(part("menu.toStrip", KeyEvent.VK_2, work.strip())));
    menu.add(item(new WindowAction("menu.toPlan", this::toPlan).menuKey(KeyEvent.VK_7)));
    menu.add(
        item(
            new WindowAction("menu.toStyle", () -> work.side().show("style"))
                .menuKey(KeyEvent.VK_8)));
    bar.add(menu);
  }

  private void gutter(double byPx) {
    window.stripController().actions().gutter(byPx);
  }

  private void phone() {
    JMenu phone =
        menu(
            "menu.phone",
            new WindowAction("menu.read", work.phoneColumn()::toggleReading).menuKey(KeyEvent.VK_R),
            new WindowAction("menu.trueSize", window::measureScreen),
            new WindowAction("menu.toPhone", this::toPhone).menuKey(KeyEvent.VK_3));
    bar.add(phone);
  }

  private void toPhone() {
    work.side().show("phone");
    Focus.into(work.phone());
  }

  private void toPlan() {
    work.side().show("plan");
    Focus.into(work.plan().overview());
  }

  private void findings() {
    FindingsView view = work.findings();
    bar.add(
        menu(
            "menu.findings",
            new WindowAction("menu.next", () -> view.step(1)).stroke(KeyEvent.VK_F8, 0),
            new WindowAction("menu.previous", () -> view.step(-1))
                .stroke(KeyEvent.VK_F8, InputEvent.SHIFT_DOWN_MASK),
            new WindowAction("menu.fix", view.bar()::fix).menuKey(KeyEvent.VK_M),
            new WindowAction("menu.ignore", view.bar()::ignoreOrStop).shiftMenuKey(KeyEvent.VK_M),
            new WindowAction("menu.toFindings", work.lowerPane()::showFindings)
                .menuKey(KeyEvent.VK_4),
            new WindowAction("menu.toMatrix", languages::showMatrix).menuKey(KeyEvent.VK_6),
            new WindowAction("menu.toReaders", work.lowerPane()::showReaders)
                .menuKey(KeyEvent.VK_9)));
  }

  private void window() {
    JMenu menu =
        menu(
            "menu.window",
            new WindowAction("menu.light", () -> setTheme(ThemeChoice.LIGHT)),
            new WindowAction("menu.dark", () -> setTheme(ThemeChoice.DARK)),
            new WindowAction("menu.asDesktop", () -> setTheme(ThemeChoice.AS_SYSTEM)));
    menu.addSeparator();
    List.of(
            new WindowAction("menu.larger", () -> change(now().scaled(1))),
            new WindowAction("menu.smaller", () -> change(now().scaled(-1))),
            new WindowAction("menu.usual", () -> change(new Theme(now().choice(), 0))))
        .forEach(action -> menu.add(item(action)));
    bar.add(menu);
  }

  private Theme now() {
    return new Theme(state.now().theme(), state.now().textSizePt());
  }

  private void setTheme(ThemeChoice choice) {
    change(new Theme(choice, now().textSizePt()));
  }

  private void change(Theme theme) {
    state.change(remembered -> remembered.themed(theme.choice()).textSized(theme.textSizePt()));
    now().change();
  }
}
