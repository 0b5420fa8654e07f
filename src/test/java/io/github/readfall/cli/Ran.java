package io.github.readfall.cli;

import io.github.readfall.type.font.OpenFaces;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Arrays;

/** What a command line came to. */
public record Ran(int status, String out, String err) {

  /** Runs a command line, with the faces of all tests. */
  public static Ran of(Object... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status =
        Cli.run(
            Arrays.stream(args).map(Object::toString).toList(),
            new PrintWriter(out),
            new PrintWriter(err),
            Window.NONE,
            OpenFaces::shelf);
    return new Ran(status, out.toString(), err.toString());
  }

  /**
   * Whether it was refused in one plain sentence: no trace, no usage, nothing on standard output.
   */
  public boolean isRefusedInOneSentence() {
    return status == Cli.UNUSABLE
        && out.isEmpty()
        && err.strip().lines().count() == 1
        && err.startsWith("readfall: ")
        && err.stripTrailing().endsWith(".")
        && !err.contains("Exception")
        && !err.contains("Usage");
  }
}
