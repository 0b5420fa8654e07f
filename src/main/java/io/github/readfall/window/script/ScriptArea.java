package io.github.readfall.window.script;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.wording.Wording;
import java.awt.Color;
import java.awt.Font;
import java.awt.GraphicsEnvironment;
import java.awt.Insets;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.MouseEvent;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import javax.swing.JTextArea;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import javax.swing.ToolTipManager;
import javax.swing.UIManager;
import javax.swing.text.BadLocationException;
import javax.swing.text.View;
import org.jspecify.annotations.Nullable;

/** The text of a script, as it is typed. */
final class ScriptArea extends JTextArea {

  private static final long serialVersionUID = 1;

  /** A script is read and written for hours, so it is larger than other text of the window. */
  private static final float LARGER = 1.15f;

  private static final int FALLBACK_SIZE = 13;
  private static final double MARGIN_EM = 1.5;

  /** The height in the view of a line that was navigated to, as a share from the top. */
  private static final double COMFORTABLE = 0.3;

  /** Created on demand, since it is asked for before this class is initialised. */
  private transient @Nullable ScriptLook look;

  private transient List<Underline> underlines = List.of();
  private transient List<TextRange> matches = List.of();
  private final transient Flash flash = new Flash(this);
  private int caretLine;
  private int lookNumber;

  ScriptArea() {
    super(new ScriptDocument());
    setLineWrap(true);
    setDragEnabled(!GraphicsEnvironment.isHeadless());
    setName("script");
    getAccessibleContext().setAccessibleName(Wording.of("editor.script"));
    ToolTipManager.sharedInstance().registerComponent(this);
    addCaretListener(e -> followCaret());
    setComponentPopupMenu(new EditMenu(this));
  }

  ScriptDocument script() {
    return (ScriptDocument) getDocument();
  }

  ScriptLook look() {
    ScriptLook known = look;
    if (known == null) {
      known = new ScriptLook(getFont(), ScriptColours.ofTheme(), context());
      look = known;
    }
    return known;
  }

  /** A number that changes whenever the look does. */
  int lookNumber() {
    return lookNumber;
  }

  private static FontRenderContext context() {
    return new FontRenderContext(
        null, RenderingHints.VALUE_TEXT_ANTIALIAS_ON, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
  }

  @Override
  public void updateUI() {
    setUI(new ScriptAreaUI(this));
    Font plain =
        Optional.ofNullable(UIManager.getFont("defaultFont"))
            .or(() -> Optional.ofNullable(UIManager.getFont("TextArea.font")))
            .orElseGet(() -> new Font(Font.DIALOG, Font.PLAIN, FALLBACK_SIZE));
    setFont(plain.deriveFont(Font.PLAIN, Math.round(plain.getSize2D() * LARGER)));
    ScriptColours colours = look().colours();
    setBackground(colours.ground());
    setForeground(colours.text());
    setCaretColor(colours.text());
  }

  @Override
  public void setFont(Font font) {
    super.setFont(font);
    look = null;
    lookNumber++;
    int margin = (int) Math.round(font.getSize() * MARGIN_EM);
    setMargin(new Insets(margin / 2, margin, margin, margin));
    refresh();
  }

  /** Lays out the lines again whose look has changed. */
  void refresh() {
    View root = getUI().getRootView(this);
    if (getDocument() instanceof ScriptDocument
        && root.getViewCount() > 0
        && root.getView(0) instanceof ScriptView view) {
      view.refresh();
    }
  }

  List<Underline> underlines() {
    return underlines;
  }

  void underline(List<Underline> found) {
    underlines = List.copyOf(found);
    repaint();
  }

  List<TextRange> matches() {
    return matches;
  }

  void mark(List<TextRange> found) {
    matches = List.copyOf(found);
    repaint();
  }

  boolean isCaretIn(int start, int end) {
    return getCaretPosition() >= start && getCaretPosition() < end;
  }

  /** The colour that a line between these offsets is highlighted in, if it is. */
  Optional<Color> flashOf(int start, int end) {
    return flash.of(start, end);
  }

  /** Repaints when the caret goes to another line, since its line is tinted. */
  private void followCaret() {
    int line = script().lineAt(getCaretPosition());
    if (line != caretLine || getSelectionStart() != getSelectionEnd()) {
      caretLine = line;
      repaint();
    }
  }

  /** The findings at an offset. */
  List<Finding> findingsAt(int offset) {
    return underlines.stream().filter(u -> u.has(offset)).map(Underline::finding).toList();
  }

  /** Moves the caret to an offset, scrolls to it, and highlights its line. */
  void goTo(int offset) {
    setCaretPosition(Math.max(0, Math.min(getDocument().getLength(), offset)));
    flash.light(getCaretPosition());
    reveal();
    SwingUtilities.invokeLater(this::reveal); // again, if the window has not been laid out yet
  }

  private void reveal() {
    if (getParent() instanceof JViewport viewport) {
      int height = viewport.getExtentSize().height;
      caretBox()
          .ifPresent(
              box ->
                  scrollRectToVisible(
                      new Rectangle(
                          0, Math.max(0, (int) (box.getY() - height * COMFORTABLE)), 1, height)));
    }
  }

  /** The box of the caret; empty if the text is not laid out. */
  Optional<Rectangle2D> caretBox() {
    return boxAt(getCaretPosition());
  }

  /** The box of a caret at an offset; empty if the text is not laid out. */
  Optional<Rectangle2D> boxAt(int offset) {
    try {
      return Optional.ofNullable(modelToView2D(offset));
    } catch (BadLocationException e) {
      return Optional.empty();
    }
  }

  @Override
  public @Nullable String getToolTipText(MouseEvent event) {
    Point at = event.getPoint();
    List<Finding> here = isOnText(at) ? findingsAt(viewToModel2D(at)) : List.of();
    return here.isEmpty() ? null : FindingTip.of(here);
  }

  private boolean isOnText(Point at) {
    try {
      Rectangle2D box = modelToView2D(viewToModel2D(at));
      int near = look().rowHeight();
      return box != null
          && Math.abs(box.getCenterY() - at.y) < near
          && Math.abs(box.getX() - at.x) < near;
    } catch (BadLocationException e) {
      return false;
    }
  }
}
