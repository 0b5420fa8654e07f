package io.github.readfall;

import io.github.readfall.cli.Cli;
import io.github.readfall.cli.Window;
import io.github.readfall.series.autosave.StateFolder;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.window.Launch;
import io.github.readfall.window.ReadfallApp;
import io.github.readfall.window.model.EpisodeTranslations;
import java.awt.GraphicsEnvironment;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.NullMarked;

/** Starts the program. */
@NullMarked
public final class Main {

  private Main() {}

  /** Runs the command line and ends with its exit status. */
  @SuppressWarnings("SystemOut")
  public static void main(String[] args) {
    if (!isForWindow(args)) {
      System.setProperty("java.awt.headless", "true");
    }
    PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    int status;
    try {
      status = Cli.run(List.of(args), out, err, new AppWindow());
    } catch (Throwable fault) { // whatever it is, it ends in one sentence
      status = Cli.bug(fault, err);
    }
    out.flush();
    System.exit(status);
  }

  /** Without a command it is opened, too, as by a double click. */
  private static boolean isForWindow(String[] args) {
    return args.length == 0 || args[0].equals("open");
  }

  /** The window of the app, for the command line to open. */
  private static final class AppWindow implements Window {
    @Override
    public boolean canOpen() {
      return !GraphicsEnvironment.isHeadless();
    }

    @Override
    public void open(FontShelf faces, Optional<Path> path) {
      Path state = StateFolder.of(System.getenv(), System.getProperties());
      ReadfallApp.run(new Launch(faces, state, path, EpisodeTranslations::new));
    }
  }
}
