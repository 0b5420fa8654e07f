package io.github.readfall.series.autosave;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The state that the window keeps from one run to the next.
 *
 * @param window its place when it is not maximised; empty before the first run
 * @param maximised true if it fills the screen
 * @param splits dividers of its panes, as a share of the whole by the name of the split; 0 to 1
 * @param theme light or dark
 * @param textSizePt of the window's words, in points, 6 to 72; 0 for the system's
 * @param last path that was open; empty if none was
 * @param recent paths that were opened, the newest first, each once, at most {@link #MOST_RECENT}
 * @param views last view of each script, by its absolute path, the newest first, at most {@link
 *     #MOST_VIEWS}
 * @param screens pixels to a millimetre, by {@link ScreenName}, the newest first; at most {@link
 *     #MOST_SCREENS}
 * @param rest what a newer program wrote and this one does not know, as JSON; empty for none
 */
public record WindowState(
    Optional<WindowBox> window,
    boolean maximised,
    Map<String, Double> splits,
    ThemeChoice theme,
    double textSizePt,
    Optional<Path> last,
    List<Path> recent,
    Map<Path, ScriptViewState> views,
    Map<String, Double> screens,
    String rest) {

  /** Number of recent paths kept. House default, no source. */
  public static final int MOST_RECENT = 12;

  /** Number of scripts whose views are kept. House default, no source. */
  public static final int MOST_VIEWS = 100;

  /** Number of screens whose measures are kept. House default, no source. */
  public static final int MOST_SCREENS = 20;

  /** The state at a first run. */
  public static final WindowState FIRST =
      new WindowState(
          Optional.empty(),
          false,
          Map.of(),
          ThemeChoice.AS_SYSTEM,
          0,
          Optional.empty(),
          List.of(),
          Map.of(),
          Map.of(),
          "");

  /** Corrects meaningless values: a file may contain anything. */
  public WindowState {
    textSizePt = textSizePt >= 6 && textSizePt <= 72 ? textSizePt : 0;
    last = last.map(WindowState::plain);
    recent = recent.stream().map(WindowState::plain).distinct().limit(MOST_RECENT).toList();
    Map<String, Double> sane = new LinkedHashMap<>(splits);
    sane.values().removeIf(share -> !(share >= 0 && share <= 1));
    splits = Collections.unmodifiableMap(sane);
    Map<Path, ScriptViewState> kept = new LinkedHashMap<>();
    views.entrySet().stream()
        .limit(MOST_VIEWS)
        .forEach(view -> kept.put(plain(view.getKey()), view.getValue()));
    views = Collections.unmodifiableMap(kept);
    Map<String, Double> measured = new LinkedHashMap<>();
    screens.entrySet().stream()
        .filter(screen -> screen.getValue() > 0 && !screen.getValue().isInfinite())
        .limit(MOST_SCREENS)
        .forEach(screen -> measured.put(screen.getKey(), screen.getValue()));
    screens = Collections.unmodifiableMap(measured);
  }

  private static Path plain(Path path) {
    return path.toAbsolutePath().normalize();
  }

  /** The last view of a script. */
  public ScriptViewState view(Path script) {
    return views.getOrDefault(plain(script), ScriptViewState.FIRST);
  }

  /** The state with a path opened just now. */
  public WindowState opened(Path path) {
    List<Path> more = new ArrayList<>(List.of(path));
    more.addAll(recent);
    return new WindowState(
        window,
        maximised,
        splits,
        theme,
        textSizePt,
        Optional.of(path),
        more,
        views,
        screens,
        rest);
  }

  /** The state with nothing open. */
  public WindowState closed() {
    return new WindowState(
        window,
        maximised,
        splits,
        theme,
        textSizePt,
        Optional.empty(),
        recent,
        views,
        screens,
        rest);
  }

  /** The state with the window at its present place. */
  public WindowState placed(WindowBox box, boolean isMaximised) {
    return new WindowState(
        Optional.of(box),
        isMaximised,
        splits,
        theme,
        textSizePt,
        last,
        recent,
        views,
        screens,
        rest);
  }

  /**
   * The state with a split moved.
   *
   * @param share of the whole before it, 0 to 1
   */
  public WindowState split(String name, double share) {
    Map<String, Double> more = new LinkedHashMap<>(splits);
    more.put(name, share);
    return new WindowState(
        window, maximised, more, theme, textSizePt, last, recent, views, screens, rest);
  }

  /** The state with another theme. */
  public WindowState themed(ThemeChoice choice) {
    return new WindowState(
        window, maximised, splits, choice, textSizePt, last, recent, views, screens, rest);
  }

  /** The state with another size of the window's words; 0 for the system's. */
  public WindowState textSized(double sizePt) {
    return new WindowState(
        window, maximised, splits, theme, sizePt, last, recent, views, screens, rest);
  }

  /** The state with the last view of a script. */
  public WindowState viewed(Path script, ScriptViewState view) {
    Map<Path, ScriptViewState> more = new LinkedHashMap<>();
    more.put(plain(script), view);
    views.forEach(more::putIfAbsent);
    return new WindowState(
        window, maximised, splits, theme, textSizePt, last, recent, more, screens, rest);
  }

  /** The state with a screen measured. */
  public WindowState measured(String screen, double pxPerMm) {
    Map<String, Double> more = new LinkedHashMap<>();
    more.put(screen, pxPerMm);
    screens.forEach(more::putIfAbsent);
    return new WindowState(
        window, maximised, splits, theme, textSizePt, last, recent, views, more, rest);
  }
}
