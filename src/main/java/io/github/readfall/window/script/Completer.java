package io.github.readfall.window.script;

import io.github.readfall.script.Keywords;
import io.github.readfall.script.LineKind;
import io.github.readfall.script.Script;
import io.github.readfall.script.assist.Slot;
import io.github.readfall.script.assist.SlotKind;
import io.github.readfall.script.read.ScriptReader;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.List;
import javax.swing.SwingUtilities;

/**
 * Offers completions at the caret: on request, and automatically when a speaker's name or a keyword
 * is begun in capitals or a bracket is opened after a speaker. Prose is left alone.
 */
final class Completer {

  /** The number of letters that make a name likely. House default, no source. */
  private static final int LETTERS = 2;

  private final ScriptArea area;
  private final CompletionList list;
  private Completions completions = Completions.NONE;

  Completer(ScriptArea area) {
    this.area = area;
    this.list = new CompletionList(area, this::write);
    area.addCaretListener(e -> closeElsewhere());
    area.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent event) {
            list.close();
          }
        });
  }

  CompletionList list() {
    return list;
  }

  void know(Completions known) {
    completions = known;
  }

  /** Offers everything that can be written at the caret. */
  void ask() {
    offer(slot());
  }

  private void offer(Slot slot) {
    list.offer(suggestions(slot), area.getCaretPosition() - slot.typed().length());
  }

  /** Offers completions of what was just typed, if there are any. */
  void typed() {
    SwingUtilities.invokeLater(this::offerQuietly); // the caret moves after the text has changed
  }

  private void offerQuietly() {
    Slot slot = slot();
    if (isBegun(slot) || (list.isOpen() && slot.kind() != SlotKind.NONE)) {
      offer(slot);
    } else {
      list.close();
    }
  }

  /** Whether what is typed can hardly be prose. */
  private boolean isBegun(Slot slot) {
    String typed = slot.typed();
    return switch (slot.kind()) {
      case LINE, SCENE ->
          typed.length() >= LETTERS
              && typed.codePoints().noneMatch(Character::isLowerCase)
              && typed.codePoints().anyMatch(Character::isUpperCase)
              && area.script().lines().kind(line()) != LineKind.CUE_TEXT;
      case MANNER -> true;
      case TOP, VOICE, HINT, NONE -> false;
    };
  }

  /** The slot at the caret. */
  Slot slot() {
    int line = line();
    int index = area.getCaretPosition() - area.script().startOf(line);
    String text = area.script().line(line);
    Slot slot = area.script().lines().slot(line, text.substring(0, index));
    boolean within = !text.substring(index).isBlank() && !mayFollow(slot, text.charAt(index));
    return within || area.getSelectionStart() != area.getSelectionEnd() ? Slot.NONE : slot;
  }

  /** Whether a sign may follow: brackets may be closed already; a list of hints may continue. */
  private static boolean mayFollow(Slot slot, char next) {
    return switch (slot.kind()) {
      case MANNER, VOICE -> ")\uFF09,".indexOf(next) >= 0;
      case HINT -> next == ',';
      case TOP, LINE, SCENE, NONE -> false;
    };
  }

  List<Suggestion> suggestions(Slot slot) {
    if (slot.kind() == SlotKind.NONE) {
      return List.of();
    }
    Keywords keywords = area.script().keywords();
    Script script = new ScriptReader().read(area.script().text(), keywords).script();
    return completions.at(slot, Completions.nextPanel(script, line()));
  }

  private int line() {
    return area.script().lineAt(area.getCaretPosition());
  }

  private void write(Suggestion suggestion) {
    int caret = area.getCaretPosition();
    area.script().put(caret - slot().typed().length(), caret, suggestion.text());
    list.close();
  }

  /** Closes the list if the caret has left its slot. */
  private void closeElsewhere() {
    if (list.isOpen() && slot().kind() == SlotKind.NONE) {
      list.close();
    }
  }
}
