package io.github.readfall.window.parts;

import java.awt.Component;
import java.awt.Container;
import java.awt.FocusTraversalPolicy;

/** Moves the keyboard focus to a part of the window. */
public final class Focus {

  private Focus() {}

  /** Focuses the first component of a part that takes keys. */
  public static void into(Container part) {
    Container root = part.isFocusCycleRoot() ? part : part.getFocusCycleRootAncestor();
    if (root == null) {
      return;
    }
    FocusTraversalPolicy order = root.getFocusTraversalPolicy();
    Component first = order.getFirstComponent(root);
    Component at = first;
    while (at != null && !part.isAncestorOf(at) && at != part) {
      at = order.getComponentAfter(root, at);
      if (at == first) {
        return;
      }
    }
    if (at != null) {
      at.requestFocusInWindow();
    }
  }
}
