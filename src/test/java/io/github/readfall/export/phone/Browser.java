package io.github.readfall.export.phone;

import java.awt.image.BufferedImage;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * A real browser for tests, without a window: Chromium, driven through W3C WebDriver and its own
 * DevTools protocol. Scripts of pages are off, as the browser's own setting says, so a page that
 * works here works without any.
 */
final class Browser implements AutoCloseable {

  private static final Pattern PORT = Pattern.compile("started successfully on port (\\d+)");
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Process driver;
  private final HttpClient http = HttpClient.newHttpClient();
  private final String session;

  private Browser(Process driver, String session) {
    this.driver = driver;
    this.session = session;
  }

  /** Whether it is there at all. */
  static boolean isInstalled() {
    return isThere("chromedriver") && isThere("chromium");
  }

  private static boolean isThere(String program) {
    try {
      Process process = new ProcessBuilder("which", program).redirectErrorStream(true).start();
      process.getInputStream().readAllBytes();
      return process.waitFor() == 0;
    } catch (IOException | InterruptedException e) {
      return false;
    }
  }

  /**
   * Starts one.
   *
   * @param profile an empty folder
   */
  static Browser start(Path profile) throws IOException, InterruptedException {
    Process driver =
        new ProcessBuilder("chromedriver", "--port=0").redirectErrorStream(true).start();
    String server = "http://127.0.0.1:" + port(driver);
    Browser starting = new Browser(driver, server + "/session");
    JsonNode begun =
        starting.post("", Map.of("capabilities", Map.of("alwaysMatch", capabilities(profile))));
    return new Browser(driver, server + "/session/" + begun.get("sessionId").asString());
  }

  private static Map<String, Object> capabilities(Path profile) {
    List<String> switches =
        List.of(
            "--headless=new",
            "--no-sandbox",
            "--disable-gpu",
            "--no-first-run",
            "--disable-background-networking",
            "--hide-scrollbars",
            "--force-color-profile=srgb",
            "--user-data-dir=" + profile);
    return Map.of(
        "browserName",
        "chrome",
        "goog:loggingPrefs",
        Map.of("performance", "ALL"),
        "goog:chromeOptions",
        Map.of(
            "args",
            switches,
            "prefs",
            Map.of(
                "profile.managed_default_content_settings.javascript",
                2,
                "session.restore_on_startup",
                4,
                "session.startup_urls",
                List.of("about:blank"))));
  }

  private static int port(Process driver) throws IOException {
    BufferedReader said =
        new BufferedReader(new InputStreamReader(driver.getInputStream(), StandardCharsets.UTF_8));
    for (String line = said.readLine(); line != null; line = said.readLine()) {
      Matcher started = PORT.matcher(line);
      if (started.find()) {
        return Integer.parseInt(started.group(1));
      }
    }
    throw new IOException("the browser's driver did not start");
  }

  private JsonNode post(String path, Object body) {
    return sent(
        HttpRequest.newBuilder(URI.create(session + path))
            .POST(HttpRequest.BodyPublishers.ofString(JSON.writeValueAsString(body)))
            .header("Content-Type", "application/json")
            .build());
  }

  private JsonNode sent(HttpRequest request) {
    try {
      HttpResponse<String> answer = http.send(request, HttpResponse.BodyHandlers.ofString());
      if (answer.statusCode() != 200) {
        throw new IllegalStateException(answer.body());
      }
      return JSON.readTree(answer.body()).get("value");
    } catch (IOException | InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  /** A command of the DevTools protocol. */
  JsonNode devTools(String command, Map<String, Object> about) {
    return post("/goog/cdp/execute", Map.of("cmd", command, "params", about));
  }

  /** The screen of a phone, in CSS pixels. */
  void screen(int width, int height, double scale) {
    devTools(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", scale, "mobile", true));
  }

  /** What the reader's system asks for: {@code light} or {@code dark}. */
  void scheme(String name) {
    devTools(
        "Emulation.setEmulatedMedia",
        Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", name))));
  }

  void open(Path file) {
    post("/url", Map.of("url", file.toUri().toString()));
  }

  /** What an expression comes to in the page, asked from outside it. */
  JsonNode value(String expression) {
    JsonNode result =
        devTools("Runtime.evaluate", Map.of("expression", expression, "returnByValue", true));
    if (result.has("exceptionDetails")) {
      throw new IllegalStateException(result.toString());
    }
    return result.get("result").path("value");
  }

  /** Presses a key: Tab, Enter, Space, ArrowDown, ArrowRight or Escape. */
  void press(String key) {
    Map<String, Object> down = new LinkedHashMap<>(key(key));
    down.put("type", "keyDown");
    devTools("Input.dispatchKeyEvent", down);
    Map<String, Object> up = new LinkedHashMap<>(key(key));
    up.remove("text");
    up.put("type", "keyUp");
    devTools("Input.dispatchKeyEvent", up);
  }

  private static Map<String, Object> key(String key) {
    return switch (key) {
      case "Tab" -> Map.of("key", "Tab", "code", "Tab", "windowsVirtualKeyCode", 9);
      case "Enter" ->
          Map.of("key", "Enter", "code", "Enter", "windowsVirtualKeyCode", 13, "text", "\r");
      case "Space" -> Map.of("key", " ", "code", "Space", "windowsVirtualKeyCode", 32, "text", " ");
      case "ArrowDown" ->
          Map.of("key", "ArrowDown", "code", "ArrowDown", "windowsVirtualKeyCode", 40);
      default -> throw new IllegalArgumentException(key);
    };
  }

  /** What can be seen now. */
  BufferedImage picture() {
    return picture(Map.of("format", "png"));
  }

  /** A part of the page, at a scale. */
  BufferedImage picture(double x, double y, double width, double height, double scale) {
    return picture(
        Map.of(
            "format",
            "png",
            "captureBeyondViewport",
            true,
            "clip",
            Map.of("x", x, "y", y, "width", width, "height", height, "scale", scale)));
  }

  private BufferedImage picture(Map<String, Object> how) {
    String data = devTools("Page.captureScreenshot", how).get("data").asString();
    try {
      return ImageIO.read(new ByteArrayInputStream(Base64.getDecoder().decode(data)));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Every address that was asked for since the last call. */
  List<String> requests() {
    List<String> addresses = new ArrayList<>();
    for (JsonNode entry : post("/se/log", Map.of("type", "performance"))) {
      JsonNode message = JSON.readTree(entry.get("message").asString()).get("message");
      if (message.get("method").asString().equals("Network.requestWillBeSent")) {
        addresses.add(message.get("params").get("request").get("url").asString());
      }
    }
    return addresses;
  }

  @Override
  public void close() {
    sent(HttpRequest.newBuilder(URI.create(session)).DELETE().build());
    driver.destroy();
  }
}
