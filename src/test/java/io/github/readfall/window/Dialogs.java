package io.github.readfall.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.Window;
import java.util.Arrays;
import java.util.Optional;
import javax.swing.JComponent;

/** The dialogs of a window, and their components. */
final class Dialogs {

  private Dialogs() {}

  /** The open dialog of a name; call on the event thread. */
  static Optional<Window> open(OpenWindow window, String name) {
    return Arrays.stream(window.window().frame().getOwnedWindows())
        .filter(owned -> owned.isShowing() && name.equals(owned.getName()))
        .findFirst();
  }

  /** Whether a dialog is open; call on the event thread. */
  static boolean isOpen(OpenWindow window, String name) {
    return open(window, name).isPresent();
  }

  /** The component of a name in a dialog. */
  static JComponent part(OpenWindow window, String dialog, String name) {
    return window.ask(() -> find(open(window, dialog).orElseThrow(), name).orElseThrow());
  }

  private static Optional<JComponent> find(Container in, String name) {
    for (Component child : in.getComponents()) {
      if (child instanceof JComponent found && name.equals(found.getName())) {
        return Optional.of(found);
      }
      if (child instanceof Container inner) {
        Optional<JComponent> deeper = find(inner, name);
        if (deeper.isPresent()) {
          return deeper;
        }
      }
    }
    return Optional.empty();
  }
}
