package io.github.readfall.transcript;

import io.github.readfall.html.Element;
import io.github.readfall.html.Markup;
import io.github.readfall.html.Page;
import io.github.readfall.html.StyleSheet;
import io.github.readfall.wording.Wording;
import java.util.List;

/** A transcript as a page of its own. */
public final class TranscriptPage {

  private TranscriptPage() {}

  /** How a transcript looks, wherever it stands: colours, letters, distances. */
  public static StyleSheet look() {
    return Page.sheet(TranscriptPage.class, "transcript.css");
  }

  /** The whole page. */
  public static String of(Transcript transcript) {
    String language = TranscriptHtml.languageName(transcript.language());
    Element head =
        Page.head(Wording.of("transcript.title", transcript.name(), language), List.of(look()));
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
