package io.github.readfall;

import java.lang.reflect.Constructor;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.InvocationInterceptor;
import org.junit.jupiter.api.extension.LifecycleMethodExecutionExceptionHandler;
import org.junit.jupiter.api.extension.ReflectiveInvocationContext;
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
    implements TestExecutionExceptionHandler,
        LifecycleMethodExecutionExceptionHandler,
        InvocationInterceptor {

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

  /** A class that needs a tool may look for it as soon as it is made. */
  @Override
  public <T> T interceptTestClassConstructor(
      Invocation<T> invocation,
      ReflectiveInvocationContext<Constructor<T>> constructor,
      ExtensionContext context)
      throws Throwable {
    return made(invocation, Boolean.getBoolean("readfall.all"));
  }

  static <T> T made(Invocation<T> making, boolean all) throws Throwable {
    try {
      return making.proceed();
    } catch (TestAbortedException skipped) {
      throw judged(skipped, all);
    }
  }

  static Throwable judged(Throwable thrown, boolean all) {
    return all && thrown instanceof TestAbortedException
        ? new AssertionError("skipped, though nothing may be: " + thrown.getMessage(), thrown)
        : thrown;
  }
}
