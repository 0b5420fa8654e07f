package io.github.readfall.window.model;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.job.Proofer;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.Surroundings;
import io.github.readfall.type.font.OpenFaces;
import io.github.readfall.window.canvas.StripScene;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** Desks for tests, with bundled faces and without threads. */
final class Desks {

  private Desks() {}

  static Proofer proofer() {
    return new Proofer(OpenFaces.shelf(), () -> 0);
  }

  /** A desk with a script on it that has no series, no layout and no faces of its own. */
  static EpisodeModel with(String text) {
    EpisodeModel desk =
        new EpisodeModel(proofer(), ModelThreads.none(), shown -> StripScene.empty(1));
    desk.open(bare(), text);
    return desk;
  }

  /** What surrounds a script that lies alone. */
  static Surroundings bare() {
    try {
      return Surroundings.read(
          new EpisodeFiles(Path.of("nowhere", "script.txt"), Optional.empty()), OpenFaces.shelf());
    } catch (UnusablePath e) {
      throw new AssertionError(e);
    }
  }

  /** What surrounds a script in a folder. */
  static Surroundings at(Path script, String text) {
    try {
      Files.writeString(script, text);
      return Surroundings.read(EpisodeFiles.at(script).get(0), OpenFaces.shelf());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (UnusablePath e) {
      throw new AssertionError(e);
    }
  }

  /** Work that is done when a test says so. */
  static final class Queue {

    private final Deque<Runnable> jobs = new ArrayDeque<>();

    void add(Runnable job) {
      jobs.add(job);
    }

    /** Does what has been waiting so far. */
    void run() {
      for (int left = jobs.size(); left > 0; left--) {
        jobs.remove().run();
      }
    }

    int waiting() {
      return jobs.size();
    }
  }
}
