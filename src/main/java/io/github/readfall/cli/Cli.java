package io.github.readfall.cli;

import io.github.readfall.job.Proofer;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command {@code readfall}. */
@Command(
    name = "readfall",
    description = "Measures the lettering of vertical-scroll comics for phones.",
    versionProvider = Version.class,
    mixinStandardHelpOptions = true,
    synopsisSubcommandLabel = "COMMAND",
    exitCodeListHeading = "%nExit status:%n",
    exitCodeList = {
      "0:no finding is as severe as --fail-on",
      "1:at least one finding is",
      "2:the command line or a file cannot be used",
      "70:an internal error of Readfall"
    })
public final class Cli implements Callable<Integer> {

  /** Exit status of a request or a file that cannot be used. */
  static final int UNUSABLE = 2;

  /** Exit status of a fault of our own (sysexits.h, EX_SOFTWARE). */
  public static final int BUG = 70;

  @Spec private CommandSpec spec;

  private final Window window;
  private final Faces faces;

  private Cli(Window window, Faces faces) {
    this.window = window;
    this.faces = faces;
  }

  @Option(
      names = "--licences",
      description = "Print the licences of everything that comes with Readfall.")
  private boolean licences;

  @Override
  public Integer call() throws Exception {
    if (licences) {
      spec.commandLine().getOut().print(Licences.text());
      spec.commandLine().getOut().flush();
      return 0;
    }
    if (window.canOpen()) {
      return new OpenCommand(window).call();
    }
    throw new ParameterException(
        spec.commandLine(),
        "Name a command, e.g. readfall fit SCRIPT; readfall --help lists them.");
  }

  /**
   * Runs a command line.
   *
   * @param args as given to the program
   * @param out the result of the command
   * @param err everything else there is to say
   * @param window opened by some commands
   * @return the exit status
   */
  public static int run(List<String> args, PrintWriter out, PrintWriter err, Window window) {
    return run(args, out, err, window, ProgramFiles::bundledFonts);
  }

  /** Runs a command line with faces from elsewhere, such as a shelf that many runs share. */
  static int run(List<String> args, PrintWriter out, PrintWriter err, Window window, Faces faces) {
    CommandLine line = new CommandLine(new Cli(window, faces));
    line.addSubcommand(new FitCommand());
    line.addSubcommand(new PlanCommand());
    line.addSubcommand(new PanelsCommand());
    line.addSubcommand(new PlaceCommand());
    line.addSubcommand(new CheckCommand());
    line.addSubcommand(new DrawCommand());
    line.addSubcommand(new ExplainCommand());
    line.addSubcommand(new NewCommand());
    line.addSubcommand(LanguagesCommand.withSubcommands());
    line.addSubcommand(new OpenCommand(window));
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setOut(out);
    line.setErr(err);
    line.setParameterExceptionHandler((e, a) -> unusable(e.getCommandLine(), Refusal.of(e)));
    line.setExecutionExceptionHandler((e, command, result) -> failed(e, command));
    int status = line.execute(args.toArray(String[]::new));
    out.flush();
    err.flush();
    return status;
  }

  /** Returns a proofer with the bundled faces, for any command below this one. */
  static Proofer proofer(CommandSpec command) throws CannotProceed {
    Cli program = (Cli) command.root().userObject();
    return new Proofer(program.faces.shelf(), System::nanoTime);
  }

  private static int failed(Exception e, CommandLine command) {
    return e instanceof CannotProceed
        ? unusable(command, String.valueOf(e.getMessage()))
        : bug(e, command.getErr());
  }

  private static int unusable(CommandLine command, String sentence) {
    command.getErr().println("readfall: " + sentence);
    command.getErr().flush();
    return UNUSABLE;
  }

  /** Reports a fault of our own, in one sentence. */
  public static int bug(Throwable fault, PrintWriter err) {
    StackTraceElement[] trace = fault.getStackTrace();
    err.println(
        "readfall: internal error, no fault of yours; nothing was changed. Please report: "
            + fault
            + (trace.length > 0 ? " at " + trace[0] : ""));
    err.flush();
    return BUG;
  }
}
