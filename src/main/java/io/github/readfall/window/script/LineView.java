package io.github.readfall.window.script;

import io.github.readfall.script.LineKind;
import io.github.readfall.script.LinePart;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.util.List;
import javax.swing.SwingConstants;
import javax.swing.event.DocumentEvent;
import javax.swing.text.BadLocationException;
import javax.swing.text.Element;
import javax.swing.text.Position;
import javax.swing.text.View;
import javax.swing.text.ViewFactory;

/** One line of a script, with space above it if a panel or scene begins. */
final class LineView extends View {

  private final ScriptView all;

  /** The setting that the rows were made with. */
  private Setting setting = Setting.NONE;

  private int revision = -1;
  private List<TextRow> rows = List.of(TextRow.EMPTY);

  /** Everything that a line's rows depend on. */
  private record Setting(String text, LineKind kind, List<LinePart> parts, int width, int look) {

    boolean isFor(int otherWidth, int otherLook) {
      return width == otherWidth && look == otherLook;
    }

    static final Setting NONE = new Setting("", LineKind.BLANK, List.of(), -1, -1);
  }

  LineView(Element line, ScriptView all) {
    super(line);
    this.all = all;
  }

  /**
   * Breaks the line into rows again if needed.
   *
   * @return whether its height or look may have changed
   */
  boolean refresh() {
    ScriptDocument document = all.area().script();
    if (document.revision() == revision && setting.isFor(all.measure(), all.area().lookNumber())) {
      return false;
    }
    revision = document.revision();
    int line = document.lineAt(getStartOffset());
    Setting now =
        new Setting(
            document.line(line),
            document.lines().kind(line),
            document.lines().parts(line),
            all.measure(),
            all.area().lookNumber());
    if (now.equals(setting)) {
      return false;
    }
    setting = now;
    rows = look().rows(now.text(), now.kind(), now.parts(), now.width());
    return true;
  }

  @Override
  public float getPreferredSpan(int axis) {
    if (axis == X_AXIS) {
      return all.getWidth();
    }
    refresh();
    return above() + rows.size() * look().rowHeight();
  }

  private ScriptLook look() {
    return all.area().look();
  }

  private int above() {
    return getStartOffset() == 0 ? 0 : look().above(setting.kind());
  }

  @Override
  public int getResizeWeight(int axis) {
    return 0;
  }

  @Override
  public void paint(Graphics g, Shape allocation) {
    Rectangle box = allocation.getBounds();
    new LinePainter((Graphics2D) g, all.area(), box, above(), setting.kind())
        .paint(rows, getStartOffset(), getEndOffset());
  }

  @Override
  public Shape modelToView(int offset, Shape allocation, Position.Bias bias)
      throws BadLocationException {
    if (offset < getStartOffset() || offset > getEndOffset()) {
      throw new BadLocationException("not in this line", offset);
    }
    int index = offset - getStartOffset();
    int row = rowOf(index);
    Rectangle box = allocation.getBounds();
    int inset = (look().rowHeight() - look().caretHeight()) / 2;
    int x = Math.min(Math.round(rows.get(row).caretX(index)), Math.max(0, all.getWidth() - 1));
    return new Rectangle(box.x + x, top(box, row) + inset, 1, look().caretHeight());
  }

  private int top(Rectangle box, int row) {
    return box.y + above() + row * look().rowHeight();
  }

  private int rowOf(int index) {
    int row = 0;
    while (row < rows.size() - 1 && rows.get(row).end() <= index) {
      row++;
    }
    return row;
  }

  @Override
  public int viewToModel(float x, float y, Shape allocation, Position.Bias[] bias) {
    bias[0] = Position.Bias.Forward;
    Rectangle box = allocation.getBounds();
    int number = (int) Math.floor((y - box.y - above()) / look().rowHeight());
    int last = rows.size() - 1;
    int at = Math.max(0, Math.min(last, number));
    TextRow row = rows.get(at);
    int most = at == last ? row.end() : row.end() - 1;
    return getStartOffset() + Math.max(row.start(), Math.min(most, row.indexAt(x - box.x)));
  }

  @Override
  public int getNextVisualPositionFrom(
      int offset, Position.Bias bias, Shape allocation, int direction, Position.Bias[] biasRet)
      throws BadLocationException {
    boolean sideways = direction == SwingConstants.EAST || direction == SwingConstants.WEST;
    if (!sideways || offset < getStartOffset() || offset >= getEndOffset()) {
      return super.getNextVisualPositionFrom(offset, bias, allocation, direction, biasRet);
    }
    biasRet[0] = Position.Bias.Forward;
    int index = offset - getStartOffset();
    TextRow row = rows.get(rowOf(index));
    boolean right = direction == SwingConstants.EAST;
    boolean forward = right == row.isLeftToRight();
    int beyond = forward ? getStartOffset() + row.end() : getStartOffset() + row.start() - 1;
    boolean atLineEnd = forward && index == setting.text().length();
    int next = row.next(index, right).map(i -> getStartOffset() + i).orElse(beyond);
    return Math.max(0, Math.min(getDocument().getLength(), atLineEnd ? getEndOffset() : next));
  }

  @Override
  public void insertUpdate(DocumentEvent e, Shape a, ViewFactory f) {
    changed();
  }

  @Override
  public void removeUpdate(DocumentEvent e, Shape a, ViewFactory f) {
    changed();
  }

  private void changed() {
    if (refresh()) {
      preferenceChanged(null, true, true);
    }
  }
}
