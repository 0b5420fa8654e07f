package io.github.readfall.window.findings;

import static io.github.readfall.window.parts.WrittenPage.escaped;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.rules.RulePages;
import io.github.readfall.window.parts.WrittenPage;
import java.awt.BorderLayout;
import javax.swing.JPanel;

/** The explanation of a finding: its advice, its measurement and its rule's page. */
final class WhyView extends JPanel {

  private static final long serialVersionUID = 1;

  private final WrittenPage page = new WrittenPage("findings.why", Wording.of("why.title"));

  WhyView() {
    super(new BorderLayout());
    add(page);
    clear();
  }

  /** Explains a finding. */
  void show(Finding finding) {
    page.show(html(finding));
  }

  /** Shows no explanation. */
  void clear() {
    page.show("<p class=quiet>" + escaped(Wording.of("why.none")) + "</p>");
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
    RulePages.of(finding.rule()).map(WrittenPage::parts).ifPresent(html::append);
    return html.toString();
  }
}
