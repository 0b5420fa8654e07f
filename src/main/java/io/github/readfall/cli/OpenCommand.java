package io.github.readfall.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Opens the window. */
@Command(
    name = "open",
    description = "Open the window: write the script and see it on the strip and on a phone.",
    mixinStandardHelpOptions = true)
final class OpenCommand implements Callable<Integer> {

  private final Window window;

  @Parameters(
      paramLabel = "PATH",
      arity = "0..1",
      description = "A script, an episode folder or a series folder (default: what was open last).")
  private Optional<Path> path = Optional.empty();

  OpenCommand(Window window) {
    this.window = window;
  }

  @Override
  public Integer call() throws CannotProceed {
    if (!window.canOpen()) {
      throw new CannotProceed(
          "There is no display to open a window on: use the other commands;"
              + " readfall --help lists them.");
    }
    if (path.isPresent() && !Files.exists(path.get())) {
      throw new CannotProceed(
          "There is nothing at "
              + path.get()
              + ": give a script, an episode folder or a series folder.");
    }
    window.open(ProgramFiles.bundledFonts(), path);
    return 0;
  }
}
