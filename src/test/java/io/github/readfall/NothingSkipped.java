package io.github.readfall;

import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.LifecycleMethodExecutionExceptionHandler;
import org.junit.jupiter.api.extension.TestExecutionExceptionHandler;
import org.opentest4j.TestAbortedException;

/**
 * Turns every skipped test into a failed one if the system property {@code readfall.all} is true.
 * The build machine sets it: it has a display and every tool that a test looks for, so a test that
 * skips itself there has found a fault of the machine or of the test.
 *
 * <p>JUnit finds this class by itself (META-INF/services).
 */
public final class NothingSkipped
    implements TestExecutionExceptionHandler, LifecycleMethodExecutionExceptionHandler {

  @Override
  public void handleTestExecutionException(ExtensionContext context, Throwable thrown)
      throws Throwable {
    throw judged(thrown, Boolean.getBoolean("readfall.all"));
  }

  @Override
  public void handleBeforeAllMethodExecutionException(ExtensionContext context, Throwable thrown)
      throws Throwable {
    throw judged(thrown, Boolean.getBoolean("readfall.all"));
  }

  @Override
  public void handleBeforeEachMethodExecutionException(ExtensionContext context, Throwable thrown)
      throws Throwable {
    throw judged(thrown, Boolean.getBoolean("readfall.all"));
  }

  static Throwable judged(Throwable thrown, boolean all) {
    return all && thrown instanceof TestAbortedException
        ? new AssertionError("skipped, though nothing may be: " + thrown.getMessage(), thrown)
        : thrown;
  }
}
