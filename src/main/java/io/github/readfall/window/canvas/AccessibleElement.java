package io.github.readfall.window.canvas;

import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.FocusListener;
import java.util.Locale;
import java.util.Optional;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleComponent;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.accessibility.AccessibleStateSet;

/** An element of a strip as assistive tools see it: a child of the strip that is no component. */
final class AccessibleElement extends AccessibleContext implements Accessible, AccessibleComponent {

  private final StripView view;
  private final int index;

  /**
   * One of the elements of a strip.
   *
   * @param index into {@link StripView#elements}
   */
  AccessibleElement(StripView view, int index) {
    this.view = view;
    this.index = index;
    setAccessibleParent(view);
  }

  private Optional<ElementDescription> element() {
    return index < view.elements().size()
        ? Optional.of(view.elements().get(index))
        : Optional.empty(); // the strip has changed since the tool asked
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    return this;
  }

  @Override
  public String getAccessibleName() {
    return element().map(ElementDescription::name).orElse("");
  }

  @Override
  public String getAccessibleDescription() {
    return element().map(ElementDescription::description).orElse("");
  }

  @Override
  public AccessibleRole getAccessibleRole() {
    return AccessibleRole.LABEL;
  }

  @Override
  public AccessibleStateSet getAccessibleStateSet() {
    AccessibleStateSet states = new AccessibleStateSet();
    states.add(AccessibleState.ENABLED);
    states.add(AccessibleState.SELECTABLE);
    states.add(AccessibleState.VISIBLE);
    if (isShowing()) {
      states.add(AccessibleState.SHOWING);
    }
    if (element().filter(ElementDescription::chosen).isPresent()) {
      states.add(AccessibleState.SELECTED);
    }
    return states;
  }

  @Override
  public int getAccessibleIndexInParent() {
    return index;
  }

  @Override
  public int getAccessibleChildrenCount() {
    return 0;
  }

  @Override
  @SuppressWarnings("NullAway") // the interface wants null if there is no such child
  public Accessible getAccessibleChild(int i) {
    return null;
  }

  @Override
  public Locale getLocale() {
    return view.getLocale();
  }

  @Override
  public AccessibleComponent getAccessibleComponent() {
    return this;
  }

  @Override
  public Color getBackground() {
    return view.getBackground();
  }

  @Override
  public void setBackground(Color c) {
    // its colours are the drawing's
  }

  @Override
  public Color getForeground() {
    return view.getForeground();
  }

  @Override
  public void setForeground(Color c) {
    // as above
  }

  @Override
  public Cursor getCursor() {
    return view.getCursor();
  }

  @Override
  public void setCursor(Cursor cursor) {
    // the strip has one cursor for all
  }

  @Override
  public Font getFont() {
    return view.getFont();
  }

  @Override
  public void setFont(Font f) {
    // its letters are part of the drawing
  }

  @Override
  public FontMetrics getFontMetrics(Font f) {
    return view.getFontMetrics(f);
  }

  @Override
  public boolean isEnabled() {
    return true;
  }

  @Override
  public void setEnabled(boolean b) {
    // always enabled
  }

  @Override
  public boolean isVisible() {
    return true;
  }

  @Override
  public void setVisible(boolean b) {
    // always visible
  }

  @Override
  public boolean isShowing() {
    return view.isShowing() && view.getVisibleRect().intersects(getBounds());
  }

  @Override
  public boolean contains(Point p) {
    return new Rectangle(getSize()).contains(p);
  }

  @Override
  public Point getLocationOnScreen() {
    Point at = getLocation();
    Point origin = view.isShowing() ? view.getLocationOnScreen() : new Point();
    return new Point(origin.x + at.x, origin.y + at.y);
  }

  @Override
  public Point getLocation() {
    return getBounds().getLocation();
  }

  @Override
  public void setLocation(Point p) {
    // its place is the layout's
  }

  @Override
  public Rectangle getBounds() {
    return element().map(element -> view.boundsOf(element.box())).orElseGet(Rectangle::new);
  }

  @Override
  public void setBounds(Rectangle r) {
    // as above
  }

  @Override
  public Dimension getSize() {
    return getBounds().getSize();
  }

  @Override
  public void setSize(Dimension d) {
    // as above
  }

  @Override
  @SuppressWarnings("NullAway") // the interface wants null if there is none
  public Accessible getAccessibleAt(Point p) {
    return null;
  }

  @Override
  public boolean isFocusTraversable() {
    return false;
  }

  @Override
  public void requestFocus() {
    view.requestFocusInWindow();
  }

  @Override
  public void addFocusListener(FocusListener l) {
    view.addFocusListener(l);
  }

  @Override
  public void removeFocusListener(FocusListener l) {
    view.removeFocusListener(l);
  }
}
