package io.github.readfall.series.autosave;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The window's state as JSON. Missing or meaningless values are as at the first run; unknown keys
 * stay where they are.
 */
final class WindowStateJson {

  private static final JsonMapper JSON = JsonMapper.builder().build();

  private WindowStateJson() {}

  /** The state in a text; empty if it is no JSON object. */
  static Optional<WindowState> read(String text) {
    try {
      return JSON.readTree(text) instanceof ObjectNode root
          ? Optional.of(remembered(root))
          : Optional.empty();
    } catch (JacksonException e) {
      return Optional.empty();
    }
  }

  private static WindowState remembered(ObjectNode root) {
    JsonNode window = root.path("window");
    Map<String, Double> splits = new LinkedHashMap<>();
    root.path("splits").properties().forEach(e -> splits.put(e.getKey(), number(e.getValue(), -1)));
    List<Path> recent = new ArrayList<>();
    root.path("recent").forEach(item -> path(item).ifPresent(recent::add));
    Map<Path, ScriptViewState> views = new LinkedHashMap<>();
    for (JsonNode view : root.path("scripts")) {
      path(view.path("path")).ifPresent(path -> views.put(path, view(view)));
    }
    Map<String, Double> screens = new LinkedHashMap<>();
    for (var screen : root.path("screens").properties()) {
      screens.put(screen.getKey(), number(screen.getValue(), 0));
    }
    return new WindowState(
        box(window),
        window.path("maximised").asBoolean(false),
        splits,
        ThemeChoice.of(words(root.path("theme"))).orElse(ThemeChoice.AS_SYSTEM),
        number(root.path("textSizePt"), 0),
        path(root.path("last")),
        recent,
        views,
        screens,
        JSON.writeValueAsString(root));
  }

  private static Optional<WindowBox> box(JsonNode window) {
    int width = whole(window.path("width"), 0);
    int height = whole(window.path("height"), 0);
    boolean whereIsKnown = window.path("x").isInt() && window.path("y").isInt();
    return whereIsKnown && width > 0 && height > 0
        ? Optional.of(
            new WindowBox(whole(window.path("x"), 0), whole(window.path("y"), 0), width, height))
        : Optional.empty();
  }

  private static ScriptViewState view(JsonNode view) {
    ScriptViewState first = ScriptViewState.FIRST;
    return new ScriptViewState(
        whole(view.path("caretLine"), first.caretLine()),
        whole(view.path("caretColumn"), first.caretColumn()),
        number(view.path("stripTopPx"), first.stripTopPx()),
        view.path("zoom").isString() ? words(view.path("zoom")) : first.zoom(),
        words(view.path("phone")),
        set(view.path("layers"), first.layers()),
        set(view.path("severities"), first.severities()),
        words(view.path("findingsFilter")));
  }

  private static int whole(JsonNode node, int otherwise) {
    return node.isInt() ? node.intValue() : otherwise;
  }

  private static double number(JsonNode node, double otherwise) {
    return node.isNumber() ? node.doubleValue() : otherwise;
  }

  private static Set<String> set(JsonNode list, Set<String> otherwise) {
    if (!list.isArray()) {
      return otherwise;
    }
    Set<String> words = new LinkedHashSet<>();
    list.forEach(node -> words.add(words(node)));
    return words;
  }

  private static String words(JsonNode node) {
    return node.isString() ? node.stringValue() : "";
  }

  private static Optional<Path> path(JsonNode node) {
    try {
      return Optional.of(words(node)).filter(word -> !word.isEmpty()).map(Path::of);
    } catch (InvalidPathException e) {
      return Optional.empty(); // of another system
    }
  }

  /** The text of the file, with a line end at its end. */
  static String write(WindowState remembered) {
    ObjectNode root = root(remembered.rest());
    root.put("readfall-window", 1);
    ObjectNode window = root.withObjectProperty("window");
    remembered
        .window()
        .ifPresent(
            box ->
                window
                    .put("x", box.x())
                    .put("y", box.y())
                    .put("width", box.width())
                    .put("height", box.height()));
    window.put("maximised", remembered.maximised());
    ObjectNode splits = root.putObject("splits");
    remembered.splits().forEach(splits::put);
    root.put("theme", remembered.theme().word());
    root.put("textSizePt", remembered.textSizePt());
    root.remove("last");
    remembered.last().ifPresent(path -> root.put("last", path.toString()));
    ArrayNode recent = root.putArray("recent");
    remembered.recent().forEach(path -> recent.add(path.toString()));
    views(root, remembered.views());
    ObjectNode screens = root.putObject("screens");
    remembered.screens().forEach(screens::put);
    return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
  }

  /** The former content of the file, to be overwritten key by key. */
  private static ObjectNode root(String rest) {
    try {
      return !rest.isEmpty() && JSON.readTree(rest) instanceof ObjectNode root
          ? root
          : JSON.createObjectNode();
    } catch (JacksonException e) {
      return JSON.createObjectNode();
    }
  }

  private static void views(ObjectNode root, Map<Path, ScriptViewState> views) {
    Map<Path, ObjectNode> before = new LinkedHashMap<>();
    for (JsonNode old : root.path("scripts")) {
      if (old instanceof ObjectNode node) {
        path(node.path("path")).ifPresent(path -> before.put(path, node));
      }
    }
    ArrayNode scripts = JSON.createArrayNode();
    views.forEach(
        (path, view) -> {
          ObjectNode node = before.getOrDefault(path, JSON.createObjectNode());
          node.put("path", path.toString())
              .put("caretLine", view.caretLine())
              .put("caretColumn", view.caretColumn())
              .put("stripTopPx", view.stripTopPx())
              .put("zoom", view.zoom())
              .put("phone", view.phone())
              .put("findingsFilter", view.findingsFilter());
          node.set("layers", JSON.valueToTree(view.layers()));
          node.set("severities", JSON.valueToTree(view.severities()));
          scripts.add(node);
        });
    root.set("scripts", scripts);
  }
}
