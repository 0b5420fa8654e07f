package io.github.readfall.window.parts;

import io.github.readfall.rules.RulePage;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Font;
import javax.swing.BorderFactory;
import javax.swing.JEditorPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.UIManager;
import javax.swing.text.html.HTMLEditorKit;
import javax.swing.text.html.StyleSheet;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/** A page of paragraphs and headings, in the font and colours of the window. */
public final class WrittenPage extends JPanel {

  private static final long serialVersionUID = 1;

  private final JEditorPane page = new JEditorPane();
  private final String words;
  private String shown = "";

  /**
   * An empty page.
   *
   * @param name of the page, in tests
   * @param words title of the page, for screen readers
   */
  public WrittenPage(String name, String words) {
    super(new BorderLayout());
    page.setEditable(false);
    page.setName(name);
    page.setBorder(BorderFactory.createEmptyBorder(4, 16, 12, 16));
    this.words = words;
    JScrollPane scroll = new JScrollPane(page);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    add(scroll);
  }

  /** Shows the body of an HTML page; {@code class=quiet} is grey. */
  public void show(String body) {
    shown = body;
    HTMLEditorKit kit = new HTMLEditorKit();
    StyleSheet look = new StyleSheet();
    look.addStyleSheet(kit.getStyleSheet());
    kit.setStyleSheet(look);
    style(look);
    page.setEditorKit(kit);
    page.getAccessibleContext().setAccessibleName(words); // each kit has a context of its own
    page.setBackground(UIManager.getColor("List.background"));
    page.setText("<html><body>" + body + "</body></html>");
    page.setCaretPosition(0);
  }

  private static void style(StyleSheet look) {
    Font font = UIManager.getFont("defaultFont");
    look.addRule(
        "body { font-family: '%s'; font-size: %dpx; color: %s; }"
            .formatted(
                font.getFamily(), font.getSize(), css(UIManager.getColor("List.foreground"))));
    look.addRule("p { margin: 6px 0 0 0; }");
    look.addRule("pre { font-family: monospaced; margin: 4px 0 0 12px; }");
    look.addRule("code { font-family: monospaced; }");
    look.addRule(
        "h3 { font-size: %dpx; margin: 14px 0 0 0; color: %s; }"
            .formatted(font.getSize(), css(UIManager.getColor("Readfall.quiet"))));
    look.addRule(".quiet { color: %s; }".formatted(css(UIManager.getColor("Readfall.quiet"))));
  }

  private static String css(Color colour) {
    return "#%06x".formatted(colour.getRGB() & 0xffffff);
  }

  /** Text escaped for HTML. */
  public static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  /** A heading. */
  public static String heading(String words) {
    return "<h3>" + escaped(words) + "</h3>";
  }

  /** The sections of a rule's page, each below its heading. */
  public static String parts(RulePage rule) {
    Parser parser = Parser.builder().build();
    HtmlRenderer renderer = HtmlRenderer.builder().escapeHtml(true).build();
    StringBuilder html = new StringBuilder();
    rule.parts()
        .forEach(
            (part, markdown) ->
                html.append(heading(part.heading()))
                    .append(renderer.render(parser.parse(markdown))));
    return html.toString();
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (shown != null) { // the superclass calls this before the fields are set
      show(shown);
    }
  }
}
