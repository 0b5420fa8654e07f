package io.github.readfall.cli;

import io.github.readfall.job.SeriesCheck;
import java.io.PrintWriter;

/** One line on a terminal that says how far the work has come; nothing anywhere else. */
record ProgressLine(PrintWriter err) implements SeriesCheck.Progress {

  /** Set by the launcher if standard error is a terminal. */
  private static final String TERMINAL = "readfall.terminal";

  /** Returns true if it can be seen. */
  static boolean isShown() {
    return Boolean.getBoolean(TERMINAL);
  }

  @Override
  public void done(int done, int all) {
    if (isShown()) {
      err.print("\rchecked " + done + " of " + all + (done == all ? "\n" : ""));
      err.flush();
    }
  }

  /** Shows how much of something is done. */
  void share(String what, long done, long all) {
    if (Boolean.getBoolean(TERMINAL)) {
      err.print("\r" + what + " " + 100 * done / all + " %" + (done == all ? "\n" : ""));
      err.flush();
    }
  }
}
