package io.github.readfall.export.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.github.readfall.base.geom.Box;
import io.github.readfall.draw.GalleyArtist;
import io.github.readfall.draw.render.Alike;
import io.github.readfall.draw.render.Java2dPainter;
import io.github.readfall.draw.render.Reaches;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Galley;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** The phone proof in a real browser whose scripts are off. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PhoneBrowserTest {

  private static final int PHONE = 360;
  private static final int TALL = 780;
  private static final double MOST_DIFFERENCE = 0.01;
  private static final double LEAST_INK = 0.005;
  private static final int PICTURES = 20;
  private static final String ACTIVE = "document.activeElement.";

  private final DrawnEpisode episode;
  private final Browser browser;

  PhoneBrowserTest(@TempDir Path profile) throws IOException, InterruptedException {
    assumeTrue(
        Browser.isInstalled(),
        "chromium and chromedriver are not there: the phone proof was not opened");
    this.episode = DrawnEpisode.sample();
    this.browser = Browser.start(profile);
  }

  @AfterAll
  void close() {
    browser.close();
  }

  @BeforeEach
  void open() {
    browser.screen(PHONE, TALL, 1);
    browser.open(episode.file("-phone.html"));
  }

  private void choose(String language) {
    browser.value("document.getElementById('show-" + language + "').click()");
  }

  private static String edition(String language) {
    return "document.getElementById('in-" + language + "')";
  }

  @ParameterizedTest
  @ValueSource(ints = {320, 360, 412, 480})
  void theStripIsAsWideAsThePhoneAndNothingScrollsSideways(int width) {
    browser.screen(width, TALL, 1);
    for (String language : List.of("en", "ar")) {
      choose(language);
      String picture = edition(language) + ".querySelector('.picture').getBoundingClientRect()";
      assertEquals(0, browser.value(picture + ".left").asDouble());
      assertEquals(width, browser.value(picture + ".width").asDouble());
      assertEquals(width, browser.value("document.documentElement.scrollWidth").asInt());
    }
  }

  @Test
  void aDesktopShowsItAsWideAsTheWidestPhoneOfTheSeries() {
    browser.screen(1280, 900, 1);
    String picture = edition("en") + ".querySelector('.picture').getBoundingClientRect()";
    assertEquals(412, browser.value(picture + ".width").asDouble());
    assertEquals((1280 - 412) / 2.0, browser.value(picture + ".left").asDouble());
  }

  @Test
  void theKeyboardReachesTheLanguagesTheFindingsAndTheTranscript() {
    browser.press("Tab");
    assertEquals("menu", browser.value(ACTIVE + "parentElement.className").asString());
    browser.press("Enter");
    browser.press("Tab");
    assertEquals("show-en", browser.value(ACTIVE + "id").asString());
    browser.press("ArrowDown");
    browser.press("ArrowDown");
    assertEquals("show-de", browser.value(ACTIVE + "id").asString());
    assertEquals(List.of("in-de"), shown());
    browser.press("Tab");
    assertEquals("findings", browser.value(ACTIVE + "id").asString());
    browser.press("Tab");
    assertEquals("#in-de-transcript", browser.value(ACTIVE + "getAttribute('href')").asString());
    browser.press("Tab");
    assertFalse(isOpen());
    browser.press("Space");
    assertTrue(isOpen());
    String said = ACTIVE + "parentElement.querySelector('.told').innerText";
    assertTrue(browser.value(said).asString().startsWith("Warning: The text of Rules"));
    browser.press("Enter");
    assertFalse(isOpen());
    int marks = browser.value(edition("de") + ".querySelectorAll('summary').length").asInt();
    for (int i = 0; i < marks; i++) {
      browser.press("Tab");
    }
    assertEquals("#in-de", browser.value(ACTIVE + "getAttribute('href')").asString());
  }

  private boolean isOpen() {
    return browser.value(ACTIVE + "parentElement.open").asBoolean();
  }

  /** The ids of the parts that can be seen. */
  private List<String> shown() {
    JsonNode ids =
        browser.value(
            "[...document.querySelectorAll('.edition')].filter(e => e.checkVisibility())"
                + ".map(e => e.id)");
    return ids.valueStream().map(JsonNode::asString).toList();
  }

  @Test
  void marksCanBeHiddenAltogether() {
    choose("de");
    String seen =
        "[...document.querySelectorAll('.found')].filter(e => e.checkVisibility()).length";
    assertTrue(browser.value(seen).asInt() > 0);
    browser.value("document.getElementById('findings').click()");
    assertEquals(0, browser.value(seen).asInt());
  }

  /** At least 24 px each way and not on each other (WCAG 2.2, 2.5.8). */
  @ParameterizedTest
  @ValueSource(ints = {320, 412})
  void marksAreLargeEnoughToTapAndLieOnNoOther(int width) {
    browser.screen(width, TALL, 1);
    for (String language : episode.galleys().keySet()) {
      choose(language);
      JsonNode found =
          browser.value(
              "["
                  + "..."
                  + edition(language)
                  + ".querySelectorAll('.strip summary')].map(e => e.getBoundingClientRect())"
                  + ".map(b => [b.x, b.y, b.width, b.height])");
      List<Box> marks =
          found.valueStream().map(b -> new Box(at(b, 0), at(b, 1), at(b, 2), at(b, 3))).toList();
      for (int i = 0; i < marks.size(); i++) {
        Box mark = marks.get(i);
        assertTrue(mark.width() >= 24 && mark.height() >= 24);
        assertTrue(mark.x() >= 0 && mark.right() <= width, language + " " + mark);
        assertTrue(
            marks.subList(0, i).stream().noneMatch(other -> mark.grownBy(-0.1).meets(other)),
            language + " " + mark);
      }
    }
  }

  private static double at(JsonNode numbers, int index) {
    return numbers.get(index).asDouble();
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "ko", "ja", "th", "ar"})
  void theTranscriptSaysWhatTheScriptSays(String language) {
    choose(language);
    assertEquals(List.of("in-" + language), shown());
    JsonNode said =
        browser.value(
            "[..."
                + edition(language)
                + ".querySelectorAll('.transcript .said')].map(e=>e.innerText)");
    List<String> bare = said.valueStream().map(JsonNode::asString).map(DrawnEpisode::bare).toList();
    assertEquals(episode.said(language), bare);
  }

  /** WCAG 2.2, 1.3.2: the sequence that a screen reader is given is that of the script. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "ar"})
  void aScreenReaderIsGivenEveryLineOnceInScriptOrder(String language) {
    choose(language);
    List<String> read = new ArrayList<>();
    Map<String, JsonNode> byId = new HashMap<>();
    JsonNode nodes = browser.devTools("Accessibility.getFullAXTree", Map.of()).get("nodes");
    nodes.forEach(node -> byId.put(node.get("nodeId").asString(), node));
    paragraphs(nodes.get(0), byId, read);
    assertEquals(episode.said(language), behindNames(read));
  }

  /** A name ends in a colon; the paragraph behind it is what is said. */
  private static List<String> behindNames(List<String> paragraphs) {
    List<String> said = new ArrayList<>();
    for (int i = 0; i + 1 < paragraphs.size(); i++) {
      if (paragraphs.get(i).endsWith(":")) {
        i++;
        said.add(paragraphs.get(i));
      }
    }
    return said;
  }

  private static void paragraphs(JsonNode node, Map<String, JsonNode> byId, List<String> found) {
    if (role(node).equals("paragraph")) {
      found.add(DrawnEpisode.bare(words(node, byId)));
      return;
    }
    node.path("childIds").forEach(id -> paragraphs(child(id, byId), byId, found));
  }

  private static String words(JsonNode node, Map<String, JsonNode> byId) {
    if (role(node).equals("StaticText")) {
      return node.path("name").path("value").asString("");
    }
    return node.path("childIds")
        .valueStream()
        .map(id -> words(child(id, byId), byId))
        .collect(Collectors.joining());
  }

  private static String role(JsonNode node) {
    return node.path("role").path("value").asString("");
  }

  private static JsonNode child(JsonNode id, Map<String, JsonNode> byId) {
    return Optional.ofNullable(byId.get(id.asString())).orElseThrow();
  }

  @Test
  void nothingIsAskedForButTheFile() {
    browser.requests();
    Path file = episode.file("-phone.html");
    browser.open(file);
    choose("ar");
    browser.picture();
    List<String> asked =
        browser.requests().stream().filter(address -> !address.startsWith("data:")).toList();
    assertEquals(List.of(file.toUri().toString()), asked);
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "ja", "ar"})
  void theLetteringLooksAsOurOwnPainterDrawsIt(String language) {
    choose(language);
    browser.value("document.getElementById('findings').click()");
    browser.value("document.querySelector('.menu').remove()");
    Galley galley = episode.galley(language);
    double perPx = galley.widthPx() / PHONE;
    String top = edition(language) + ".querySelector('.picture').getBoundingClientRect().top";
    browser.screen(PHONE, 800, 2);
    browser.value("scrollTo(0, " + top + " + scrollY + 1800)"); // across the end of a piece
    double fromPx = -browser.value(top).asDouble() * perPx;
    BufferedImage painted = painted(galley, fromPx, browser.picture());
    assertTrue(ink(painted) > LEAST_INK, "there is nothing there");
    double difference = leastDifference(painted);
    assertTrue(difference < MOST_DIFFERENCE, "they differ by " + difference);
  }

  /** The browser scrolls and decodes beside us, so its first pictures may be old. */
  private double leastDifference(BufferedImage painted) {
    return IntStream.range(0, PICTURES)
        .mapToDouble(picture -> Alike.meanDifference(browser.picture(), painted))
        .filter(difference -> difference < MOST_DIFFERENCE)
        .findFirst()
        .orElseGet(() -> Alike.meanDifference(browser.picture(), painted));
  }

  private static BufferedImage painted(Galley galley, double fromPx, BufferedImage like) {
    BufferedImage image =
        new BufferedImage(like.getWidth(), like.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, image.getWidth(), image.getHeight());
    double scale = image.getWidth() / galley.widthPx();
    g.scale(scale, scale);
    g.translate(0, -fromPx);
    Java2dPainter painter = new Java2dPainter(g);
    g.setColor(new Color(0x8b9190));
    g.setStroke(new BasicStroke(3));
    for (PanelBox panel : galley.panels()) {
      Box box = panel.box();
      g.draw(new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height()));
    }
    Reaches.of(GalleyArtist.lettering(galley), galley.heightPx())
        .between(fromPx, fromPx + image.getHeight() / scale)
        .forEach(mark -> mark.paintOn(painter));
    g.dispose();
    return image;
  }

  private static double ink(BufferedImage image) {
    BufferedImage white =
        new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = white.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, white.getWidth(), white.getHeight());
    g.dispose();
    return Alike.meanDifference(image, white);
  }
}
