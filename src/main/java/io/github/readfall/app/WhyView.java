package io.github.readfall.app;

import io.github.readfall.finding.Finding;
import io.github.readfall.rules.RulePage;
import io.github.readfall.rules.RulePages;
import io.github.readfall.wording.Wording;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Font;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JEditorPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.UIManager;
import javax.swing.text.html.HTMLEditorKit;
import javax.swing.text.html.StyleSheet;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/** Why a finding matters and how to mend it: its advice, its measure, and the rule's page. */
final class WhyView extends JPanel {

  private static final long serialVersionUID = 1;

  private final JEditorPane page = new JEditorPane();
  private transient Optional<Finding> shown = Optional.empty();

  WhyView() {
    super(new BorderLayout());
    page.setEditable(false);
    page.setName("findings.why");
    page.setBorder(BorderFactory.createEmptyBorder(4, 16, 12, 16));
    page.getAccessibleContext().setAccessibleName(Wording.of("why.title"));
    JScrollPane scroll = new JScrollPane(page);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    add(scroll);
    clear();
  }

  /** Explains a finding. */
  void show(Finding finding) {
    shown = Optional.of(finding);
    fill(html(finding));
  }

  /** Explains nothing. */
  void clear() {
    shown = Optional.empty();
    fill("<p class=quiet>" + escaped(Wording.of("why.none")) + "</p>");
  }

  private void fill(String body) {
    HTMLEditorKit kit = new HTMLEditorKit();
    StyleSheet look = new StyleSheet();
    look.addStyleSheet(kit.getStyleSheet());
    kit.setStyleSheet(look);
    style(look);
    page.setEditorKit(kit);
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

  private static String html(Finding finding) {
    StringBuilder html = new StringBuilder();
    html.append("<p><b>").append(escaped(finding.message())).append("</b></p>");
    if (!finding.advice().isEmpty()) {
      html.append("<p>").append(escaped(finding.advice())).append("</p>");
    }
    finding
        .measurement()
        .ifPresent(
            m ->
                html.append("<p class=quiet>")
                    .append(escaped(Wording.of("why.measured", m.figure(), m.limitFigure())))
                    .append("</p>"));
    RulePages.of(finding.rule()).ifPresent(rule -> parts(html, rule));
    return html.toString();
  }

  private static void parts(StringBuilder html, RulePage rule) {
    Parser parser = Parser.builder().build();
    HtmlRenderer renderer = HtmlRenderer.builder().escapeHtml(true).build();
    rule.parts()
        .forEach(
            (part, markdown) ->
                html.append("<h3>")
                    .append(escaped(part.heading()))
                    .append("</h3>")
                    .append(renderer.render(parser.parse(markdown))));
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (shown != null) { // called by the constructor above
      shown.ifPresentOrElse(this::show, this::clear);
    }
  }
}
