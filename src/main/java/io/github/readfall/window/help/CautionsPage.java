package io.github.readfall.window.help;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.window.parts.WrittenPage;
import java.util.List;

/** What a program cannot know, and who can: eyes, faces, texts, local rules. */
final class CautionsPage {

  private static final List<String> ABOUT = List.of("eyes", "sight", "faces", "texts");

  private CautionsPage() {}

  /** The page. */
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
