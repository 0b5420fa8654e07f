package io.github.readfall.window;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.script.Cue;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.Panel;
import io.github.readfall.strip.edits.StripItem;
import io.github.readfall.window.canvas.StripPane;
import io.github.readfall.window.model.EpisodeModel;
import io.github.readfall.window.model.EpisodeSnapshot;
import io.github.readfall.window.model.LayoutModel;
import io.github.readfall.window.model.ScriptStripLinks;
import io.github.readfall.window.model.Selection;
import io.github.readfall.window.parts.Notice;
import io.github.readfall.window.parts.NoticeBar;
import io.github.readfall.window.strip.BalloonMenu;
import io.github.readfall.window.strip.LayoutActions;
import io.github.readfall.window.strip.PendingShape;
import io.github.readfall.window.strip.SelectionView;
import io.github.readfall.window.strip.StripActions;
import io.github.readfall.window.strip.StripKeys;
import io.github.readfall.window.strip.StripPointerTool;
import java.util.Optional;
import javax.swing.JMenu;

/** Connects the strip with its mouse and key tools, its menus and its selection. */
final class StripController {

  private final EpisodeModel model;
  private final WorkView view;
  private final NoticeBar notices;
  private final Selection chosen = new Selection();
  private final StripPointerTool pointerTool;
  private final StripActions actions;
  private final BalloonMenu menu;

  StripController(
      EpisodeModel model,
      LayoutModel layout,
      WorkView view,
      NoticeBar notices,
      LayoutActions layoutActions) {
    this.model = model;
    this.view = view;
    this.notices = notices;
    StripPane pane = view.strip();
    pointerTool = new StripPointerTool(model, layout, chosen, pane, notices);
    actions = new StripActions(model, layout, chosen, pane);
    new SelectionView(model, chosen, pointerTool, pane).listen();
    new StripKeys(actions, pointerTool, pane).bind();
    menu = new BalloonMenu(actions, layoutActions, this::toScript);
    pane.view().setComponentPopupMenu(menu.popup());
    view.editor().onTextChange(text -> chosen.clear());
  }

  Selection chosen() {
    return chosen;
  }

  StripActions actions() {
    return actions;
  }

  /** The balloon menu of the window. */
  JMenu menu() {
    return menu.menu();
  }

  /** Starts drawing an area to keep clear. */
  void drawArea() {
    pointerTool.draw(new PendingShape.Area());
  }

  /** Starts drawing the box of the panel at the caret. */
  void drawPanel() {
    int line = view.editor().caret().line();
    links()
        .flatMap(links -> links.panelAt(line))
        .map(Panel::number)
        .ifPresentOrElse(
            panel -> pointerTool.draw(new PendingShape.Panel(panel)),
            () -> showNotice("drawing.noPanel"));
  }

  /**
   * Starts marking the mouth of the speaker of the selected balloon, else of the cue at the caret.
   */
  void drawMouth() {
    cue()
        .filter(cue -> cue.kind() == CueKind.DIALOGUE)
        .map(cue -> new StripItem.Mouth(cue.panel(), cue.speaker()))
        .ifPresentOrElse(
            mouth -> pointerTool.draw(new PendingShape.Mouth(mouth)),
            () -> showNotice("drawing.noSpeaker"));
  }

  private void showNotice(String key) {
    notices.show(Notice.of("drawing", Wording.of(key)));
  }

  private Optional<ScriptStripLinks> links() {
    return model.shown().map(EpisodeSnapshot::links);
  }

  private Optional<Cue> cue() {
    int line = view.editor().caret().line();
    return chosen.balloons().stream()
        .findFirst()
        .flatMap(id -> model.shown().flatMap(shown -> shown.episode().script().cue(id)))
        .or(() -> links().flatMap(links -> links.cueAt(line)));
  }

  private void toScript() {
    cue().ifPresent(cue -> view.editor().goTo(cue.line(), 1));
    view.editor().focusText();
  }
}
