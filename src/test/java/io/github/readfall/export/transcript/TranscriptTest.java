package io.github.readfall.export.transcript;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.export.html.HtmlPage;
import io.github.readfall.export.phone.PhoneFile;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.Sample;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.plan.order.ReadingOrder;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Manner;
import io.github.readfall.script.MarkupReader;
import io.github.readfall.script.Script;
import io.github.readfall.script.Shot;
import io.github.readfall.script.read.ScriptReader;
import io.github.readfall.strip.Cuts;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TranscriptTest {

  private static final Original ENGLISH = new Original("en", Set.of());

  private static final String SCRIPT =
      """
      Title: Ebb
      Episode: 3
      Cast: Ilse, Old Wouter (elder)

      SCENE Tide mill, before dawn
      PANEL 1  long shot, tall, rain
      The mill stands in water
      to its knees.

      CAPTION: Nobody had turned the wheel.
      ILSE (thought): It is *counting* _again_.
      OLD WOUTER (off, whisper): Do not touch it / yet.
      ILSE (sadly): 5 \\* 3
      SFX (drawn): KRRANK

      PANEL 1b  close-up, inset
      OLD WOUTER (caption): I knew.
      OLD WOUTER (caption, joined): <b>I & "you"</b>
      """;

  private static Script script(String text) {
    return new ScriptReader().read(text, Keywords.ENGLISH).script();
  }

  private static Transcript transcript(String text) {
    return Transcriber.of(script(text), ENGLISH, List.of());
  }

  private static Document page(Transcript transcript) {
    return Jsoup.parse(TranscriptPage.of(transcript));
  }

  @Test
  void plainTextSaysAllInScriptOrderAndNoMarkup() {
    assertEquals(
        """
        Ebb 3
        Transcript, English

        SCENE 1: Tide mill, before dawn

        Panel 1: long shot, tall, rain
            The mill stands in water to its knees.
            Caption: Nobody had turned the wheel.
            Ilse (thinks): It is counting again.
            Old Wouter (off-panel, whispers): Do not touch it yet.
            Ilse (sadly): 5 * 3
            Sound effect (lettered in the picture): KRRANK

        Panel 2 (1b): close-up, inset in the previous panel
            Old Wouter (caption): I knew.
            Old Wouter (caption, continues): <b>I & "you"</b>
        """,
        TranscriptText.of(transcript(SCRIPT)));
  }

  @Test
  void severalSpeakersAreAllNamed() {
    assertEquals(
        "Mara & Otis", transcript("Cast: Mara, Otis\nPANEL\nMARA/OTIS: Now.").lines().get(0).who());
  }

  @Test
  void theSameStandsInThePage() {
    Transcript transcript = transcript(SCRIPT);
    Document page = page(transcript);

    assertEquals(
        transcript.lines().stream().map(TranscribedLine::said).toList(),
        page.select(".said").eachText());
    assertEquals("Old Wouter (off-panel, whispers):", page.select(".who").get(2).text());
    assertEquals(List.of("counting"), page.select("em").eachText());
    assertEquals(List.of("again"), page.select("i").eachText());
    assertEquals("<b>I & \"you\"</b>", page.select(".said").get(6).text());
  }

  @Test
  void headingsLeaveOutNoLevel() {
    assertEquals(List.of("h1", "h2", "h3", "h3"), headings(page(transcript(SCRIPT))));
    assertEquals(List.of("h1", "h2"), headings(page(transcript("PANEL 1\n\nA: One."))));
    assertEquals(
        List.of("h1", "h2", "h2", "h3"),
        headings(page(transcript("PANEL 1\n\nA: One.\n\nSCENE Mill\n\nPANEL 2\n\nB: Two."))));
  }

  private static List<String> headings(Document page) {
    return page.select("h1, h2, h3, h4").stream().map(Element::tagName).toList();
  }

  @Test
  void whatIsNotTranslatedKeepsTheLanguageOfTheScript() {
    Script script = script("Language: en\n\nPANEL 1\nA mill.\n\nA: One.\n\nB: Two.");
    Script arabic =
        script.inLanguage(
            "ar", cue -> cue.id().equals("p1-1") ? MarkupReader.text("واحد.") : cue.text());
    Original original = new Original("en", Set.of("p1-2"));
    Document page = page(Transcriber.of(arabic, original, List.of()));

    assertEquals(List.of("ar", "en"), page.select(".said").eachAttr("lang"));
    assertEquals(List.of("rtl", "ltr"), page.select(".said").eachAttr("dir"));
    assertEquals(List.of("en"), page.select(".drawn").eachAttr("lang"));
  }

  /** The first strong letter of a line says which way it is read (UAX #9, P2 and P3). */
  @Test
  void inPlainTextWhatIsReadFromTheRightHasALineOfItsOwn() {
    Transcript transcript = transcript("Language: ar\n\nPANEL 1\n\nSFX: طق");
    assertTrue(TranscriptText.of(transcript).endsWith("    Sound effect:\nطق\n"));
  }

  /** A line end between letters of a script without spaces is nothing (CSS Text 3, 4.1.3). */
  @ParameterizedTest
  @CsvSource({
    "One / two, One two",
    "*One / two* three, One two three",
    "あいう / えお, あいうえお",
    "하나 / 둘, 하나 둘",
    "あい / two, あい two"
  })
  void aForcedBreakIsASpaceWhereThereAreSpaces(String typed, String read) {
    Transcript transcript = transcript("PANEL 1\n\nSFX: " + typed);
    assertEquals(read, transcript.lines().get(0).said());
  }

  @Test
  void everyMannerAndEveryShotHasItsWords() {
    String manners =
        Manner.known().stream()
            .map(manner -> "A (" + manner.word() + "): x\n")
            .reduce("", String::concat);
    Transcript transcript = transcript("PANEL 1\n\n" + manners);
    assertEquals(Manner.known().size(), transcript.lines().size());
    for (TranscribedLine line : transcript.lines()) {
      assertEquals(1, line.how().size(), line.toString());
    }
    for (Shot shot : Shot.values()) {
      String heading = shot.name().toLowerCase(Locale.ROOT).replace('_', ' ');
      boolean isWhole = heading.endsWith("up");
      Transcript seen = transcript("PANEL 1  " + heading + (isWhole ? "" : " shot"));
      assertEquals(
          List.of(heading.replace("close up", "close-up") + (isWhole ? "" : " shot")),
          seen.scenes().get(0).panels().get(0).shot());
    }
  }

  @Test
  void anotherOrderOnTheStripIsSaidAndNotFollowed() {
    Galley astray = galley(2000, 300);
    Transcript transcript = Transcriber.of(astray, ENGLISH);

    assertEquals(List.of("p1-2", "p1-1"), ReadingOrder.of(astray).metIds());
    assertEquals(List.of("One.", "Two."), transcript.lines().stream().map(l -> l.said()).toList());
    String note =
        "On the strip, line 2 of panel 1 (B) is read before line 1 of panel 1 (A); this"
            + " transcript keeps the order of the script.";
    assertEquals(List.of(note), transcript.asides());
    assertEquals(List.of(note), page(transcript).select(".aside").eachText());
    assertTrue(TranscriptText.of(transcript).contains(note));

    assertEquals(List.of(), Transcriber.of(galley(300, 2000), ENGLISH).asides());
  }

  private static Galley galley(double... tops) {
    SetEpisode set =
        new Typesetter(Sample.shelf(), HouseStyle.DEFAULT)
            .set(Sample.script("en", "A: One.\n", "B: Two."));
    List<PlacedBalloon> placed = new ArrayList<>();
    for (int i = 0; i < tops.length; i++) {
      placed.add(
          PlacedBalloon.of(set.balloons().get(i), new XY(300, tops[i]), List.of(), false, false));
    }
    return new Galley(
        set,
        1600,
        4000,
        List.of(new PanelBox(1, new Box(100, 100, 1400, 3800))),
        placed,
        List.of(),
        List.of(),
        Cuts.NONE);
  }

  @Test
  void thePageLoadsNothingAndHasNoScript() {
    Document page = page(transcript(SCRIPT));
    assertEquals("en", page.select("html").attr("lang"));
    assertTrue(page.select("script, [src], iframe, object").isEmpty());
    assertEquals(List.of("data:,"), page.select("link").eachAttr("href"));
    assertTrue(page.select("meta[http-equiv]").attr("content").startsWith("default-src 'none'"));
    assertFalse(page.select("meta[name=viewport]").attr("content").contains("scalable"));
  }

  /** WCAG 2.2, 1.4.3: 4.5 to 1 for letters of ordinary size; computed by its formula. */
  @ParameterizedTest
  @CsvSource({"--ink", "--quiet", "--link"})
  void lettersCanBeReadInLightAndInDark(String letters) {
    String css = TranscriptPage.look().css() + HtmlPage.sheet(PhoneFile.class, "phone.css").css();
    List<Colour> papers = colours(css, "--paper");
    List<Colour> inks = colours(css, letters);
    assertEquals(2, papers.size());
    assertEquals(2, inks.size());
    for (int i = 0; i < 2; i++) {
      assertTrue(inks.get(i).contrastWith(papers.get(i)) >= 4.5, letters + " " + i);
    }
  }

  private static List<Colour> colours(String css, String name) {
    return Pattern.compile(Pattern.quote(name) + ": (#[0-9a-f]{6})")
        .matcher(css)
        .results()
        .flatMap(found -> Colour.parse(found.group(1)).stream())
        .toList();
  }

  /** White figures on marks of every severity, and on the button of the menu. */
  @Test
  void figuresOnMarksCanBeRead() {
    String css = HtmlPage.sheet(PhoneFile.class, "phone.css").css();
    Map<String, Colour> marks =
        Stream.of("--error", "--warning", "--note", "--bar")
            .collect(Collectors.toMap(name -> name, name -> colours(css, name).get(0)));
    marks.forEach((name, colour) -> assertTrue(colour.contrastWith(Colour.WHITE) >= 4.5, name));
  }
}
