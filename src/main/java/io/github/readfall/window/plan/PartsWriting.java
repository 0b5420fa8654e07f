package io.github.readfall.window.plan;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.plan.Split;
import io.github.readfall.script.Script;
import io.github.readfall.series.Episode;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.EpisodeParts;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.window.parts.Notice;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** Lists the parts that will be written next to the episode, and writes them on request. */
public final class PartsWriting {

  private static final String TOPIC = "parts";

  private final PlanController planning;
  private final Executor disk;
  private final FontShelf faces;
  private final Consumer<Notice> notices;
  private final Consumer<Path> open;

  /**
   * Has written nothing yet.
   *
   * @param disk reads and writes
   * @param notices shows plans, results and problems; called on any thread
   * @param open opens an episode
   */
  public PartsWriting(
      PlanController planning,
      Executor disk,
      FontShelf faces,
      Consumer<Notice> notices,
      Consumer<Path> open) {
    this.planning = planning;
    this.disk = disk;
    this.faces = faces;
    this.notices = notices;
    this.open = open;
  }

  /**
   * Lists the files that will be written for the split that is shown.
   *
   * @param files of the episode, which is saved
   * @param offerAgain saves and offers again
   */
  public void offer(EpisodeFiles files, Runnable offerAgain) {
    Optional<PlanContent> plan = planning.upToDate().filter(shown -> shown.split().isPresent());
    plan.ifPresentOrElse(
        shown ->
            disk.execute(
                () ->
                    attempt(
                        () -> notice(files, new Offer(shown.text(), shown.split()), offerAgain))),
        () -> notices.accept(notYet()));
  }

  /** The text and split that the parts are made from. */
  private record Offer(String text, Optional<Split> split) {}

  private Notice notice(EpisodeFiles files, Offer offer, Runnable offerAgain) throws UnusablePath {
    Script script = Episode.read(files, faces).script();
    if (!text(script).equals(offer.text())) {
      return notYet();
    }
    EpisodeParts parts = EpisodeParts.of(files, script, offer.split().orElseThrow().firstPanels());
    Notice.Action write =
        new Notice.Action(Wording.of("parts.write"), () -> write(offer, parts, offerAgain));
    return new Notice(TOPIC, sentence("parts.planned", parts), List.of(write));
  }

  /** The text as it is shown, whatever its line endings. */
  private static String text(Script script) {
    return script.lines().stream()
        .map(line -> line.text() + (line.ending().isEmpty() ? "" : "\n"))
        .collect(Collectors.joining());
  }

  private static Notice notYet() {
    return Notice.of(TOPIC, Wording.of("plan.notYet"));
  }

  /** Writes the parts, or offers them again if the script or the split has changed by now. */
  private void write(Offer offer, EpisodeParts parts, Runnable offerAgain) {
    if (planning.upToDate().filter(now -> isOf(now, offer)).isEmpty()) {
      offerAgain.run();
      return;
    }
    disk.execute(
        () ->
            attempt(
                () -> {
                  parts.write();
                  Path first = parts.scripts().get(0);
                  Notice.Action go =
                      new Notice.Action(Wording.of("parts.open"), () -> open.accept(first));
                  return new Notice(TOPIC, sentence("parts.written", parts), List.of(go));
                }));
  }

  private static boolean isOf(PlanContent now, Offer offer) {
    return now.text().equals(offer.text()) && now.split().equals(offer.split());
  }

  private static String sentence(String key, EpisodeParts parts) {
    String names = parts.scripts().stream().map(Path::toString).collect(Collectors.joining(", "));
    return Wording.of(key, parts.scripts().size(), names);
  }

  /** A step that ends in a notice. */
  private interface Attempt {
    Notice make() throws UnusablePath;
  }

  private void attempt(Attempt attempt) {
    try {
      notices.accept(attempt.make());
    } catch (UnusablePath e) {
      notices.accept(Notice.of(TOPIC, String.valueOf(e.getMessage())));
    }
  }
}
