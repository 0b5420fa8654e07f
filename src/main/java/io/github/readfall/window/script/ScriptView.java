package io.github.readfall.window.script;

import java.awt.Shape;
import javax.swing.event.DocumentEvent;
import javax.swing.text.BoxView;
import javax.swing.text.Element;
import javax.swing.text.View;
import javax.swing.text.ViewFactory;

/** All lines of a script, one below the other, each broken to the available width. */
final class ScriptView extends BoxView {

  private final ScriptArea area;

  ScriptView(Element root, ScriptArea area) {
    super(root, Y_AXIS);
    this.area = area;
  }

  ScriptArea area() {
    return area;
  }

  /** The width that a line may have. */
  int measure() {
    return Math.max(1, Math.min(getWidth(), area.look().measure()));
  }

  /** Lays out the changed lines again; all of them if the look has changed. */
  void refresh() {
    boolean changed = false;
    for (int i = 0; i < getViewCount(); i++) {
      changed |= getView(i) instanceof LineView line && line.refresh();
    }
    if (changed) {
      preferenceChanged(null, true, true);
      area.repaint();
    }
  }

  @Override
  public ViewFactory getViewFactory() {
    return element -> new LineView(element, this);
  }

  @Override
  public void setSize(float width, float height) {
    if ((int) width != getWidth()) {
      layoutChanged(Y_AXIS);
    }
    super.setSize(width, height);
  }

  @Override
  public void insertUpdate(DocumentEvent e, Shape a, ViewFactory f) {
    super.insertUpdate(e, a, getViewFactory());
    refresh();
  }

  @Override
  public void removeUpdate(DocumentEvent e, Shape a, ViewFactory f) {
    super.removeUpdate(e, a, getViewFactory());
    refresh();
  }

  @Override
  public float getMinimumSpan(int axis) {
    return axis == X_AXIS ? 0 : super.getMinimumSpan(axis);
  }

  /** The view of a line, counted from 1. */
  View line(int line) {
    return getView(line - 1);
  }
}
