package io.github.readfall.window.help;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.window.parts.WrittenPage;
import java.util.List;

/** Cautions about things that a program cannot know: eyes, fonts, texts, local rules. */
final class CautionsPage {

  private static final List<String> ABOUT = List.of("eyes", "sight", "faces", "texts");

  private CautionsPage() {}

  /** Makes the page. */
  static WrittenPage make() {
    WrittenPage page = new WrittenPage("help.cautions", Wording.of("help.cautions"));
    StringBuilder html = new StringBuilder();
    for (String about : ABOUT) {
      html.append(WrittenPage.heading(Wording.of("cautions." + about)))
          .append("<p>")
          .append(WrittenPage.escaped(Wording.of("cautions." + about + ".words")))
          .append("</p>");
    }
    page.show(html.toString());
    return page;
  }
}
