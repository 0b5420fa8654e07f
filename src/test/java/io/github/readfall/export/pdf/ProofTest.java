package io.github.readfall.export.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.files.Cancelled;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.typeset.SetLine;
import io.github.readfall.script.Cue;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

/** Proofs as other programs read them: PDFBox, Poppler, qpdf. */
class ProofTest {

  /** Lines of our own invention; each language has letters that the others do not. */
  private static final Map<String, String> SCRIPTS =
      Map.of(
          "en",
              """
              Title: Low Tide & <High>
              SCENE The quay
              PANEL 1  long shot
              A quay, empty but for a gull.
              CAPTION: Nobody had told the gull.
              ILSE (thought): It is *counting* again, isn't it?
              PANEL 2
              The gull, closer.
              ILSE: One.
              ILSE (joined): And one more.
              SFX: KRRANK
              """,
          "de",
              """
              Language: de
              PANEL 1
              ILSE: Größer als die Straßenbahn, schätzungsweise.
              WOUTER (whisper): Übermorgen heißt heute.
              """,
          "ko",
              """
              Language: ko
              PANEL 1
              ILSE: 물이 다시 들어왔어요. 보셨어요?
              WOUTER: 아무도 세지 않았어.
              """,
          "ja",
              """
              Language: ja
              PANEL 1
              ILSE: 潮がまた満ちてきました。ご覧になりましたか?
              WOUTER: だれも「数え」ていない。
              """,
          "th",
              """
              Language: th
              PANEL 1
              ILSE: น้ำขึ้นอีกแล้ว เห็นไหมที่นี่
              WOUTER: ไม่มีใครนับ 12 ครั้ง
              """,
          "ar",
              """
              Language: ar
              PANEL 1
              ILSE: عاد الماء 12 مرة، هل رأيت؟
              WOUTER: لا أحد يعد الأمواج.
              """,
          "hi",
              """
              Language: hi
              PANEL 1
              ILSE: पानी फिर आ गया, क्या देखा?
              WOUTER: शक्ति की प्रार्थना किसी ने नहीं गिनी।
              """);

  private static final Map<String, Made> MADE = new TreeMap<>();

  private static final Path FAULTS = Path.of("docs/pictures/strip");

  private final Path temp;

  ProofTest(@TempDir Path temp) {
    this.temp = temp;
  }

  @BeforeAll
  static void make(@TempDir Path folder) throws Exception {
    for (Map.Entry<String, String> script : SCRIPTS.entrySet()) {
      Path own = folder.resolve(script.getKey());
      MADE.put(script.getKey(), Made.of(Made.strip(own, script.getValue())));
    }
    MADE.put("faults", Made.of(Made.strip(FAULTS)));
  }

  private static Made made(String name) {
    return Objects.requireNonNull(MADE.get(name));
  }

  private static String bare(String text) {
    return text.replaceAll("[\\s\\u200B]+", "")
        .replace('\'', '’') // typed straight, lettered as printed
        .toUpperCase(Locale.ROOT)
        .replace("\u1E9E", "SS"); // capital sharp s
  }

  private static List<Cue> cues(Made made) {
    return made.strip().script().cues();
  }

  /** PDFBox turns numbers round in a line that is read from the right. */
  private static String digitsAside(String text) {
    return text.matches("(?s).*\\p{IsArabic}.*") ? text.replaceAll("[0-9]+", "0") : text;
  }

  /** What is in a text must be there in the order of the script, each once passed is passed. */
  private static void assertInOrder(List<Cue> cues, String text) {
    String all = digitsAside(bare(text));
    int from = 0;
    for (Cue cue : cues) {
      String words = digitsAside(bare(cue.text().plain()));
      int at = all.indexOf(words, from);
      assertTrue(at >= 0, cue.id() + " is not behind the one before it: " + all);
      from = at + words.length();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "ko", "ja", "th", "ar", "hi"})
  void balloonsSayTheScriptInItsOrderToWhoeverHearsThem(String language) throws Exception {
    Made made = made(language);
    try (PDDocument document = Loader.loadPDF(made.pdf())) {
      List<TaggedText.Element> said =
          TaggedText.of(document).stream()
              .filter(e -> e.type().equals("P") && e.element().getActualText() != null)
              .toList();
      assertEquals(cues(made).size(), said.size());
      for (int i = 0; i < said.size(); i++) {
        Cue cue = cues(made).get(i);
        String words = cue.text().plain().replace('\n', ' ');
        assertTrue(said.get(i).element().getActualText().endsWith(": " + words), words);
        String drawn = bare(String.join("", said.get(i).lines()));
        assertTrue(drawn.endsWith(bare(words) + bare(words)), drawn); // the column, the balloon
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "ko", "ja", "th", "ar", "hi"})
  void everyLineOfABalloonIsATextInTheOrderOfReading(String language) throws Exception {
    Made made = made(language);
    List<String> set =
        made.strip().galley().balloons().stream()
            .flatMap(balloon -> balloon.set().lines().stream())
            .map((SetLine line) -> line.line().text())
            .toList();
    try (PDDocument document = Loader.loadPDF(made.pdf())) {
      List<String> drawn =
          TaggedText.of(document).stream().flatMap(e -> e.lines().stream()).toList();
      int next = 0;
      for (String line : drawn) {
        next += next < set.size() && line.equals(set.get(next)) ? 1 : 0;
      }
      assertEquals(set.size(), next, "from line " + next + " on it is not in " + drawn);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "ko", "ja", "th", "ar", "hi"})
  void pdfBoxTakesTheBalloonsOutInTheOrderOfTheScript(String language) throws Exception {
    Made made = made(language);
    try (PDDocument document = Loader.loadPDF(made.pdf())) {
      assertInOrder(cues(made), new PDFTextStripper().getText(document));
    }
  }

  /** Of the strip's half of the pages alone, so that the script beside it does not count. */
  private String byPoppler(Made made) throws Exception {
    String width = Long.toString(Math.round(Paper.of(made.strip().galley()).stripPt()));
    String file = made.in(temp).toString();
    return Tool.run(
        "pdftotext",
        "-raw",
        "-r",
        "72",
        "-f",
        "2",
        "-x",
        "36",
        "-y",
        "40",
        "-W",
        width,
        "-H",
        "762",
        file,
        "-");
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "ko", "ja", "th", "hi"})
  void popplerTakesTheBalloonsOutInTheOrderOfTheScript(String language) throws Exception {
    assertInOrder(cues(made(language)), byPoppler(made(language)));
  }

  /**
   * Poppler 22 turns what is read from the right round once more where a document says it as it is
   * read (ISO 32000-1, 14.9.4): nothing is missing, but each line is turned round.
   */
  @Test
  void popplerFindsEveryLetterOfArabic() throws Exception {
    String text = byPoppler(made("ar"));
    for (Cue cue : cues(made("ar"))) {
      for (String word : cue.text().plain().split("[\\s\\p{Punct}،؟]+", -1)) {
        String turned = new StringBuilder(word).reverse().toString();
        assertTrue(text.contains(word) || text.contains(turned), word + " is not in " + text);
      }
    }
  }

  @Test
  void everyFaceIsEmbedded() throws Exception {
    for (Made made : MADE.values()) {
      try (PDDocument document = Loader.loadPDF(made.pdf())) {
        assertFalse(fonts(document).isEmpty());
        for (PDFont font : fonts(document)) {
          assertTrue(font.isEmbedded(), font.getName());
          assertTrue(font.getCOSObject().containsKey(COSName.TO_UNICODE), font.getName());
        }
      }
      List<String> rows = Tool.run("pdffonts", made.in(temp).toString()).lines().skip(2).toList();
      assertFalse(rows.isEmpty());
      rows.forEach(row -> assertTrue(row.matches(".* yes yes yes +\\d+ +0"), row));
    }
  }

  private static List<PDFont> fonts(PDDocument document) throws Exception {
    List<PDFont> fonts = new ArrayList<>();
    for (PDPage page : document.getPages()) {
      for (COSName name : page.getResources().getFontNames()) {
        fonts.add(page.getResources().getFont(name));
      }
    }
    return fonts;
  }

  @Test
  void qpdfFindsNoFault() throws Exception {
    for (Made made : List.of(made("en"), made("ar"), made("faults"))) {
      String said = Tool.run("qpdf", "--check", made.in(temp).toString());
      assertTrue(said.contains("No syntax or stream encoding errors"), said);
    }
  }

  /** What a machine can check of PDF/UA-1 (ISO 14289-1), by veraPDF, which is not ours. */
  @Test
  void veraPdfFindsThatAProofKeepsToPdfUa() throws Exception {
    VeraGreenfieldFoundryProvider.initialise();
    Made lacking = Made.of(Made.strip(temp.resolve("ep"), "PANEL 1\n\nA: No sign \uD80C\uDC00.\n"));
    for (Made made : List.of(made("en"), made("ar"), made("hi"), made("faults"), lacking)) {
      try (PDFAParser parser =
              Foundries.defaultInstance()
                  .createParser(new ByteArrayInputStream(made.pdf()), PDFAFlavour.PDFUA_1);
          PDFAValidator validator =
              Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false)) {
        ValidationResult result = validator.validate(parser);
        assertTrue(result.getTotalAssertions() > 500, "hardly anything was checked");
        assertEquals(List.of(), result.getTestAssertions().stream().map(Object::toString).toList());
        assertTrue(result.isCompliant());
      }
    }
  }

  /** PDF/UA-1 (ISO 14289-1), 7.1 to 7.3 and 7.18, from memory. */
  @Test
  void whatAnAccessibleDocumentNeedsIsThere() throws Exception {
    for (Made made : List.of(made("en"), made("ja"), made("faults"))) {
      try (PDDocument document = Loader.loadPDF(made.pdf())) {
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        assertEquals(1.7f, document.getVersion());
        assertTrue(catalog.getMarkInfo().isMarked());
        assertEquals(made.strip().script().language(), catalog.getLanguage());
        assertTrue(catalog.getViewerPreferences().displayDocTitle());
        assertEquals(made.strip().title(), document.getDocumentInformation().getTitle());
        String xmp = new String(catalog.getMetadata().toByteArray(), StandardCharsets.UTF_8);
        assertTrue(xmp.contains("<pdfuaid:part>1</pdfuaid:part>"), xmp);
        for (PDPage page : document.getPages()) {
          assertEquals("S", page.getCOSObject().getNameAsString("Tabs"));
        }
      }
    }
  }

  @Test
  void panelsAreSectionsInScriptOrderEachWithItsPictureInWords() throws Exception {
    try (PDDocument document = Loader.loadPDF(made("en").pdf())) {
      List<TaggedText.Element> elements = TaggedText.of(document);
      assertEquals(
          List.of("H1 Low Tide & <High>", "H2 Panel 1: long shot", "H2 Panel 2"),
          elements.stream()
              .filter(e -> e.type().startsWith("H"))
              .map(e -> e.type() + " " + String.join(" ", e.lines()))
              .toList());
      List<String> pictures =
          elements.stream()
              .filter(e -> e.type().equals("Figure"))
              .map(e -> String.valueOf(e.element().getAlternateDescription()))
              .toList();
      assertEquals(
          List.of("A quay, empty but for a gull.", "The gull, closer."), pictures.subList(1, 3));
      assertTrue(pictures.get(0).startsWith("The strip as drawn"), pictures.get(0));
    }
  }

  @Test
  void whatIsInAnotherLanguageSaysSo() throws Exception {
    try (PDDocument document = Loader.loadPDF(made("ja").pdf())) {
      TaggedText.Element cover = TaggedText.of(document).get(1);
      assertEquals("en", cover.element().getLanguage());
    }
  }

  @Test
  void bookmarksLeadToScenesAndPanels() throws Exception {
    try (PDDocument document = Loader.loadPDF(made("en").pdf())) {
      List<String> titles = new ArrayList<>();
      for (PDOutlineItem item : document.getDocumentCatalog().getDocumentOutline().children()) {
        titles.add(item.getTitle());
        item.children().forEach(child -> titles.add("> " + child.getTitle()));
      }
      assertEquals(
          List.of("Figures", "Scene 1: The quay", "> Panel 1: long shot", "> Panel 2"),
          titles.stream().filter(title -> !title.equals("Without a place")).toList());
    }
  }

  @Test
  void everyFindingWithAPlaceIsANoteAtItAndIsWrittenBesideIt() throws Exception {
    List<Finding> placed =
        made("faults").strip().findings().stream().filter(f -> f.box().isPresent()).toList();
    assertTrue(placed.size() >= 5);
    try (PDDocument document = Loader.loadPDF(made("faults").pdf())) {
      List<String> notes = new ArrayList<>();
      for (PDPage page : document.getPages()) {
        for (PDAnnotation note : page.getAnnotations()) {
          assertEquals("Text", note.getSubtype());
          assertTrue(note.getStructParent() >= 0);
          notes.add(note.getContents());
        }
      }
      assertEquals(
          placed.stream()
              .map(f -> f.severity().word() + " " + f.rule() + ": " + f.message())
              .sorted()
              .toList(),
          notes.stream().map(text -> withoutAdvice(text, placed)).sorted().toList());
      String text = bare(new PDFTextStripper().getText(document));
      for (Finding finding : made("faults").strip().findings()) {
        assertTrue(text.contains(bare(finding.message())), finding.message());
        assertTrue(text.contains(bare(finding.advice())), finding.advice());
      }
    }
  }

  private static String withoutAdvice(String text, List<Finding> findings) {
    return findings.stream()
        .filter(f -> text.endsWith(f.message() + " " + f.advice()))
        .map(f -> text.substring(0, text.length() - f.advice().length() - 1))
        .findFirst()
        .orElse(text);
  }

  @Test
  void whatDoesNotFitBesideTheStripGoesOnBehindIt() throws Exception {
    ProofStrip strip = made("faults").strip();
    List<Finding> many =
        IntStream.range(0, 120)
            .mapToObj(
                i ->
                    Finding.of(
                            "words/long",
                            Severity.NOTE,
                            Where.everywhere(),
                            "Made up, number " + i + " of many.",
                            "Do nothing about number " + i + ".")
                        .at(new Box(10 * i, 20 * i, 90, 40)))
            .toList();
    Made made = Made.of(Made.with(strip, many));
    try (PDDocument document = Loader.loadPDF(made.pdf())) {
      String text = bare(new PDFTextStripper().getText(document));
      for (Finding finding : many) {
        assertTrue(text.contains(bare(finding.message())), finding.message());
        assertTrue(text.contains(bare(finding.advice())), finding.advice());
      }
      assertTrue(document.getNumberOfPages() > 3);
      assertEquals(
          made.strip().findings().stream().filter(f -> f.box().isPresent()).count(),
          notes(document));
    }
  }

  private static int notes(PDDocument document) throws Exception {
    int notes = 0;
    for (PDPage page : document.getPages()) {
      notes += page.getAnnotations().size();
    }
    return notes;
  }

  @Test
  void aStripWithoutPlacesIsProofedAsAScript() throws Exception {
    ProofStrip placed = made("en").strip();
    ProofStrip bare =
        new ProofStrip(
            "proof.pdf",
            Galley.unplaced(placed.galley().set()),
            placed.findings(),
            placed.art(),
            placed.shelf());
    Made made = Made.of(bare);
    try (PDDocument document = Loader.loadPDF(made.pdf())) {
      assertEquals(2, document.getNumberOfPages());
      assertInOrder(cues(made), new PDFTextStripper().getText(document));
    }
  }

  @Test
  void aBalloonThatIsTallerThanAPageIsOnEveryPageThatItReaches() throws Exception {
    String words = "The quay and the gull. ".repeat(150);
    Made made = Made.of(Made.strip(temp.resolve("ep"), "PANEL 1\n\nILSE: " + words + "\n"));
    Galley galley = made.strip().galley();
    Box reach = galley.balloons().get(0).reach();
    long pages =
        Segment.of(galley, Paper.of(galley)).stream()
            .filter(
                s -> Math.min(s.bottomPx(), reach.bottom()) - Math.max(s.topPx(), reach.y()) > 1000)
            .count();
    assertTrue(pages > 1, "it fits on a page");
    int found = 0;
    try (PDDocument document = Loader.loadPDF(made.pdf())) {
      PDFTextStripper stripper = new PDFTextStripper();
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        found += stripper.getText(document).contains("QUAY") ? 1 : 0; // in capitals: lettered
      }
    }
    assertTrue(found >= pages, "on " + found + " of " + pages);
  }

  @Test
  void noPageCutsABalloon() throws Exception {
    ProofStrip strip = Made.strip(Path.of("sample-scripts/overdue-tide/ep01"));
    List<Segment> segments = Segment.of(strip.galley(), Paper.of(strip.galley()));
    assertTrue(segments.size() > 3);
    assertEquals(0, segments.get(0).topPx());
    assertEquals(strip.galley().heightPx(), segments.get(segments.size() - 1).bottomPx());
    for (PlacedBalloon balloon : strip.galley().balloons()) {
      Box reach = balloon.reach();
      assertTrue(
          segments.stream().anyMatch(s -> s.topPx() <= reach.y() && s.bottomPx() >= reach.bottom()),
          balloon.id());
    }
  }

  /** The strip is at least as large as on the phone (1 dp is 1/160 inch, Android documentation). */
  @Test
  void theStripIsNoSmallerThanOnThePhone() {
    Galley galley = made("faults").strip().galley();
    assertTrue(Paper.of(galley).stripMm() >= galley.set().phone().widthDp() * 25.4 / 160);
  }

  @Test
  void theSameStripGivesTheSameBytes() throws Exception {
    Made again = Made.of(Made.strip(FAULTS));
    assertArrayEquals(made("faults").pdf(), again.pdf());
  }

  /** fsType of the OpenType specification, OS/2: what of a face may be in a document. */
  @ParameterizedTest
  @CsvSource({
    "0x0000, yes yes yes",
    "0x0004, yes yes yes",
    "0x0008, yes yes yes",
    "0x0100, yes no  yes",
    "0x0002, none",
    "0x0200, none"
  })
  void aFaceIsEmbeddedAsFarAsItsFileAllows(int fsType, String embedded) throws Exception {
    Path fonts = Files.createDirectories(temp.resolve("fonts"));
    Path pangolin = Path.of("fonts-open/pangolin/Pangolin-Regular.ttf");
    Files.write(fonts.resolve("Own.ttf"), PatchedFace.withFsType(pangolin, fsType));
    Files.writeString(temp.resolve("series.toml"), "[voices.default]\nface = \"fonts/Own.ttf\"\n");
    Made made = Made.of(Made.strip(temp.resolve("ep01"), SCRIPTS.getOrDefault("en", "")));
    List<String> rows =
        Tool.run("pdffonts", made.in(temp).toString())
            .lines()
            .filter(row -> row.contains("Pangolin"))
            .toList();
    if (embedded.equals("none")) {
      assertEquals(List.of(), rows);
      try (PDDocument document = Loader.loadPDF(made.pdf())) {
        String text = new PDFTextStripper().getText(document);
        assertTrue(text.contains("drawn as outlines"), text);
        assertInOrder(cues(made), text);
      }
      assertInOrder(cues(made), byPoppler(made));
    } else {
      assertTrue(rows.get(0).contains(embedded), rows.get(0));
      assertInOrder(cues(made), byPoppler(made));
    }
  }

  @Test
  void whoStopsItGetsNothing() {
    ProofBatch batch = new ProofBatch(List.of(made("faults").strip()));
    assertThrows(
        Cancelled.class,
        () ->
            batch.writeTo(
                name -> new ByteArrayOutputStream(),
                (done, of) -> {
                  throw new Cancelled();
                }));
  }
}
