package io.github.readfall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrowsExactly;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.InvocationInterceptor.Invocation;
import org.opentest4j.TestAbortedException;

class NothingSkippedTest {

  private final Throwable skip = new TestAbortedException("there is no display");
  private final Throwable failure = new AssertionError("wrong");

  @Test
  void aSkipIsAFailureOnTheBuildMachine() {
    Throwable judged = NothingSkipped.judged(skip, true);
    assertEquals(AssertionError.class, judged.getClass());
    assertEquals("skipped, though nothing may be: there is no display", judged.getMessage());
  }

  @Test
  void aSkipWhileAClassIsMadeIsOneToo() throws Throwable {
    Invocation<String> skipping =
        () -> {
          throw new TestAbortedException("there is no browser");
        };
    assertThrowsExactly(AssertionError.class, () -> NothingSkipped.made(skipping, true));
    assertThrowsExactly(TestAbortedException.class, () -> NothingSkipped.made(skipping, false));
    assertEquals("made", NothingSkipped.made(() -> "made", true));
  }

  @Test
  void aSkipStaysOneElsewhere() {
    assertSame(skip, NothingSkipped.judged(skip, false));
  }

  @Test
  void aFailureStaysOne() {
    assertSame(failure, NothingSkipped.judged(failure, true));
  }
}
