package io.github.readfall.window.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.draw.Layer;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class TileWorkerTest {

  private final OutOfMemoryError failure = new OutOfMemoryError("of a test");

  private final Optional<Thread.UncaughtExceptionHandler> before =
      Optional.ofNullable(Thread.getDefaultUncaughtExceptionHandler());
  private final List<Throwable> reported = new CopyOnWriteArrayList<>();
  private final List<TileGrid.Id> painted = new CopyOnWriteArrayList<>();
  private final TilePainter painter = painter();
  private final TileWorker worker = new TileWorker(new TileCache(64L << 20), this::done);

  private static TilePainter painter() {
    StripScene scene = Strips.striped(2000, 100);
    return new TilePainter(scene, EnumSet.allOf(Layer.class), TileGrid.of(scene, 1));
  }

  private void done(TileWorker.Job job) {
    if (job.id().row() == 0) {
      throw failure;
    }
    painted.add(job.id());
  }

  @AfterEach
  void restore() {
    Thread.setDefaultUncaughtExceptionHandler(before.orElse(null));
  }

  private TileWorker.Job job(int row) {
    TileGrid.Id id = new TileGrid.Id(0, row);
    return new TileWorker.Job(painter, id, painter.marksFingerprint(id));
  }

  private void paint(TileWorker.Job... jobs) throws Exception {
    worker.want(List.of(jobs), Optional.empty(), 0);
    Strips.until(worker::isIdle, "idle");
  }

  @Test
  void aTileThatFailsIsReportedAndTheOthersArePainted() throws Exception {
    Thread.setDefaultUncaughtExceptionHandler((thread, failure) -> reported.add(failure));
    paint(job(0), job(1));
    assertEquals(List.of(failure), reported);
    assertEquals(List.of(new TileGrid.Id(0, 1)), painted);
    paint(job(2));
    assertTrue(painted.contains(new TileGrid.Id(0, 2)), "nothing is painted after a failure");
  }
}
