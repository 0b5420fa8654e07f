package io.github.readfall;

import io.github.readfall.cli.Cli;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.NullMarked;

/** Starts the program. */
@NullMarked
public final class Main {

  private Main() {}

  /** Runs the command line and ends with its exit status. */
  @SuppressWarnings("SystemOut")
  public static void main(String[] args) {
    System.setProperty("java.awt.headless", "true");
    PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    int status;
    try {
      status = Cli.run(List.of(args), out, err);
    } catch (Throwable fault) { // whatever it is, it ends in one sentence
      status = Cli.bug(fault, err);
    }
    out.flush();
    System.exit(status);
  }
}
