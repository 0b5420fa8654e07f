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

/** Models for tests, with bundled faces and without threads. */
final class TestModels {

  private TestModels() {}

  static Proofer proofer() {
    return new Proofer(OpenFaces.shelf(), () -> 0);
  }

  /** A model of a script that has no series, no layout and no faces of its own. */
  static EpisodeModel with(String text) {
    EpisodeModel model =
        new EpisodeModel(proofer(), ModelThreads.none(), shown -> StripScene.empty(1));
    model.open(bare(), text);
    return model;
  }

  /** The surroundings of a script without a series. */
  static Surroundings bare() {
    try {
      return Surroundings.read(
          new EpisodeFiles(Path.of("nowhere", "script.txt"), Optional.empty()), OpenFaces.shelf());
    } catch (UnusablePath e) {
      throw new AssertionError(e);
    }
  }

  /** The surroundings of a script in a folder. */
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

  /** Jobs that run when a test says so. */
  static final class Queue {

    private final Deque<Runnable> jobs = new ArrayDeque<>();

    void add(Runnable job) {
      jobs.add(job);
    }

    /** Runs the jobs that were added so far. */
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
