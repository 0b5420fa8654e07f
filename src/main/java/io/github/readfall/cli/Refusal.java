package io.github.readfall.cli;

import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Explains in one sentence why a command line cannot be understood, and what there is instead. */
final class Refusal {

  private Refusal() {}

  static String of(ParameterException e) {
    if (e instanceof UnmatchedArgumentException unmatched) {
      return notKnown(unmatched);
    }
    if (e instanceof MissingParameterException missing) {
      return missing(missing);
    }
    if (e instanceof OverwrittenOptionException twice) {
      return name(twice.getOverwritten()) + " is given twice: give it once.";
    }
    ArgSpec argument = e.getArgSpec();
    return argument == null ? String.valueOf(e.getMessage()) : badValue(argument, e);
  }

  private static String notKnown(UnmatchedArgumentException e) {
    String first = e.getUnmatched().get(0);
    CommandSpec command = e.getCommandLine().getCommandSpec();
    if (first.startsWith("-")) {
      return "There is no option " + shown(first) + "; there is " + options(command) + ".";
    }
    Collection<String> commands = new TreeSet<>(command.subcommands().keySet());
    return commands.isEmpty()
        ? shown(first) + " is one path too many: put a path with spaces in quotes."
        : "There is no command " + shown(first) + "; there is " + listed(commands, command) + ".";
  }

  private static String listed(Collection<String> commands, CommandSpec command) {
    return commands.stream()
        .map(name -> command.qualifiedName() + " " + name)
        .collect(Collectors.joining(", "));
  }

  private static String options(CommandSpec command) {
    return command.options().stream()
        .map(OptionSpec::longestName)
        .collect(Collectors.joining(", "));
  }

  private static String missing(MissingParameterException e) {
    String needed = e.getMissing().stream().map(Refusal::need).collect(Collectors.joining(", "));
    String command = e.getCommandLine().getCommandSpec().qualifiedName();
    return needed + ": " + command + " --help shows the usage.";
  }

  private static String need(ArgSpec argument) {
    return argument.isOption()
        ? name(argument) + " needs a value: " + argument.paramLabel()
        : argument.paramLabel() + " is missing";
  }

  private static String badValue(ArgSpec argument, ParameterException e) {
    String value = e.getValue() == null ? "that" : shown(e.getValue());
    String can = choices(argument);
    return name(argument)
        + (can.isEmpty()
            ? " cannot be " + value + "."
            : " is one of " + can + ", not " + value + ".");
  }

  private static String choices(ArgSpec argument) {
    Object[] constants = argument.type().getEnumConstants();
    return constants == null
        ? ""
        : List.of(constants).stream().map(String::valueOf).collect(Collectors.joining(", "));
  }

  private static String name(ArgSpec argument) {
    return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
  }

  /** Text that a person typed, short enough for a sentence. */
  static String shown(String argument) {
    String plain =
        argument
            .codePoints()
            .map(c -> Character.isISOControl(c) ? '\uFFFD' : c)
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
            .toString();
    return '"' + plain + '"';
  }
}
