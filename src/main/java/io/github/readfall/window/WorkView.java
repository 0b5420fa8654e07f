package io.github.readfall.window;

import io.github.readfall.window.canvas.PhoneView;
import io.github.readfall.window.canvas.StripPane;
import io.github.readfall.window.findings.FindingsView;
import io.github.readfall.window.parts.ProportionalSplit;
import io.github.readfall.window.parts.SidePane;
import io.github.readfall.window.phone.PhoneColumn;
import io.github.readfall.window.plan.FiguresLine;
import io.github.readfall.window.plan.PlanView;
import io.github.readfall.window.script.ScriptEditor;
import io.github.readfall.window.strip.StripColumn;
import java.awt.BorderLayout;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSplitPane;

/**
 * The main part of the window: script, strip and the pages beside them, and the lower pane below
 * the first two.
 */
final class WorkView extends JPanel {

  private static final long serialVersionUID = 1;

  private final ScriptEditor editor = new ScriptEditor();
  private final StripPane strip = new StripPane();
  private final PhoneView phone = new PhoneView();
  private final StripColumn stripColumn = new StripColumn(strip);
  private final PhoneColumn phoneColumn = new PhoneColumn(phone);
  private final SidePane side = new SidePane();
  private final PlanView plan = new PlanView();
  private final LowerPane lowerPane = new LowerPane();
  private final FiguresLine figures = new FiguresLine();
  private final Map<String, ProportionalSplit> splits = new LinkedHashMap<>();
  private final ScriptColumn scriptColumn;

  WorkView() {
    super(new BorderLayout());
    scriptColumn = new ScriptColumn(editor);
    JComponent above = split("script", JSplitPane.HORIZONTAL_SPLIT, scriptColumn, stripColumn, 0.5);
    JComponent left = split("findings", JSplitPane.VERTICAL_SPLIT, above, lowerPane, 0.72);
    add(split("phone", JSplitPane.HORIZONTAL_SPLIT, left, side, 0.76));
    side.page("phone", phoneColumn);
    side.page("plan", plan);
    splits.put("why", findings().split());
    add(figures, BorderLayout.SOUTH);
  }

  private ProportionalSplit split(
      String name, int orientation, JComponent first, JComponent second, double share) {
    var split = new ProportionalSplit(name, orientation, first, second, share);
    splits.put(name, split);
    return split;
  }

  ScriptEditor editor() {
    return editor;
  }

  StripPane strip() {
    return strip;
  }

  PhoneView phone() {
    return phone;
  }

  ScriptColumn scriptColumn() {
    return scriptColumn;
  }

  StripColumn stripColumn() {
    return stripColumn;
  }

  PhoneColumn phoneColumn() {
    return phoneColumn;
  }

  PlanView plan() {
    return plan;
  }

  SidePane side() {
    return side;
  }

  FindingsView findings() {
    return lowerPane.findings();
  }

  LowerPane lowerPane() {
    return lowerPane;
  }

  FiguresLine figures() {
    return figures;
  }

  /** The share of the first part of each split, 0 to 1, by the name of the split. */
  Map<String, Double> shares() {
    Map<String, Double> shares = new LinkedHashMap<>();
    splits.forEach((name, split) -> shares.put(name, split.share()));
    return shares;
  }

  /** Moves the splits; those that are not named go back to their first position. */
  void setShares(Map<String, Double> shares) {
    splits.forEach(
        (name, split) -> {
          split.setShare(shares.getOrDefault(name, split.getResizeWeight()));
          split.validate(); // so that the splits inside it know their size
        });
  }
}
