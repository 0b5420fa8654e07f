package io.github.readfall.export.transcript;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.export.html.Element;
import io.github.readfall.export.html.HtmlPage;
import io.github.readfall.export.html.Markup;
import io.github.readfall.export.html.StyleSheet;
import java.util.List;

/** A transcript as a page of its own. */
public final class TranscriptPage {

  private TranscriptPage() {}

  /** The style of a transcript anywhere: colours, letters, distances. */
  public static StyleSheet look() {
    return HtmlPage.sheet(TranscriptPage.class, "transcript.css");
  }

  /** The whole page. */
  public static String of(Transcript transcript) {
    String language = TranscriptHtml.languageName(transcript.language());
    Element head =
        HtmlPage.head(Wording.of("transcript.title", transcript.name(), language), List.of(look()));
    Element title = TranscriptHtml.in(transcript.writtenIn(), Element.of("h1", transcript.name()));
    Element about =
        Element.of("p", Wording.of("transcript.about") + ", ")
            .as("about")
            .holding(TranscriptHtml.named(transcript.language()));
    Element main =
        Element.of("main")
            .as("transcript")
            .holding(title, about)
            .holding(TranscriptHtml.of(transcript, 2));
    Element page =
        Element.of("html")
            .with("lang", Wording.of("transcript.language"))
            .holding(head, Element.of("body").holding(main));
    return Markup.DOCTYPE + Markup.of(page);
  }
}
