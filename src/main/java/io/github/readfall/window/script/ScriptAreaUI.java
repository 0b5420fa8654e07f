package io.github.readfall.window.script;

import javax.swing.plaf.basic.BasicTextAreaUI;
import javax.swing.text.Element;
import javax.swing.text.View;

/** Shows the lines of a script by their kinds; everything else is as in any text area. */
final class ScriptAreaUI extends BasicTextAreaUI {

  private final ScriptArea area;

  ScriptAreaUI(ScriptArea area) {
    this.area = area;
  }

  @Override
  public View create(Element root) {
    return new ScriptView(root, area);
  }
}
