package io.github.readfall.app;

import io.github.readfall.canvas.StripPane;
import io.github.readfall.canvas.StripScene;
import io.github.readfall.desk.Chosen;
import io.github.readfall.desk.Desk;
import io.github.readfall.desk.Links;
import io.github.readfall.desk.Shown;
import io.github.readfall.desk.StripWork;
import io.github.readfall.edits.Item;
import io.github.readfall.script.Cue;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.Panel;
import io.github.readfall.wording.Wording;
import java.util.Optional;
import javax.swing.JMenu;

/** Where the strip is worked on by hand: mouse, keys and menus, and what they have chosen. */
final class StripBench {

  private final Desk<StripScene> desk;
  private final WorkView view;
  private final NoticeBar notices;
  private final Chosen chosen = new Chosen();
  private final StripHands hands;
  private final StripActions actions;
  private final BalloonMenu menu;

  StripBench(
      Desk<StripScene> desk, StripWork work, WorkView view, NoticeBar notices, LayoutWays ways) {
    this.desk = desk;
    this.view = view;
    this.notices = notices;
    StripPane pane = view.strip();
    hands = new StripHands(desk, work, chosen, pane, notices);
    actions = new StripActions(desk, work, chosen, pane);
    new StripChoice(desk, chosen, hands, pane);
    new StripKeys(actions, hands, pane);
    menu = new BalloonMenu(actions, ways, this::toScript);
    pane.view().setComponentPopupMenu(menu.popup());
    view.editor().onTyped(text -> chosen.clear());
  }

  Chosen chosen() {
    return chosen;
  }

  StripActions actions() {
    return actions;
  }

  /** The window's menu of what can be done to balloons. */
  JMenu menu() {
    return menu.menu();
  }

  /** Waits for an area to be drawn that nothing may cover. */
  void drawArea() {
    hands.draw(new Drawing.Area());
  }

  /** Waits for the box of the panel that the caret is in. */
  void drawPanel() {
    int line = view.editor().caret().line();
    links()
        .flatMap(links -> links.panelAt(line))
        .map(Panel::number)
        .ifPresentOrElse(
            panel -> hands.draw(new Drawing.Panel(panel)), () -> tell("drawing.noPanel"));
  }

  /** Waits for the mouth of whoever says what is chosen, else what the caret is in. */
  void drawMouth() {
    cue()
        .filter(cue -> cue.kind() == CueKind.DIALOGUE)
        .map(cue -> new Item.Mouth(cue.panel(), cue.speaker()))
        .ifPresentOrElse(
            mouth -> hands.draw(new Drawing.Mouth(mouth)), () -> tell("drawing.noSpeaker"));
  }

  private void tell(String key) {
    notices.tell(Notice.of("drawing", Wording.of(key)));
  }

  private Optional<Links> links() {
    return desk.shown().map(Shown::links);
  }

  private Optional<Cue> cue() {
    int line = view.editor().caret().line();
    return chosen.balloons().stream()
        .findFirst()
        .flatMap(id -> desk.shown().flatMap(shown -> shown.episode().script().cue(id)))
        .or(() -> links().flatMap(links -> links.cueAt(line)));
  }

  private void toScript() {
    cue().ifPresent(cue -> view.editor().goTo(cue.line(), 1));
    view.editor().focusText();
  }
}
