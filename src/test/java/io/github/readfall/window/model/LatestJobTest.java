package io.github.readfall.window.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LatestJobTest {

  private final TestModels.Queue thread = new TestModels.Queue();
  private final LatestJob newest = new LatestJob(thread::add);
  private final List<Integer> done = new ArrayList<>();

  @Test
  void ofJobsThatHaveNotBegunTheLastIsDone() {
    newest.offer(() -> done.add(1));
    newest.offer(() -> done.add(2));
    newest.offer(() -> done.add(3));
    thread.run();
    assertEquals(List.of(3), done);
    assertEquals(0, thread.waiting());
  }

  @Test
  void aJobThatComesWhileAnotherIsDoneIsDoneAfterIt() {
    newest.offer(
        () -> {
          newest.offer(() -> done.add(2));
          done.add(1);
        });
    thread.run();
    thread.run();
    assertEquals(List.of(1, 2), done);
  }
}
