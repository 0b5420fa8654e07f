package io.github.readfall.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What is done with the other languages of an episode. */
@Command(
    name = "languages",
    description = "Send a script out to be translated, take translations in, and set them.",
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true)
final class LanguagesCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  static CommandLine withSubcommands() {
    CommandLine languages = new CommandLine(new LanguagesCommand());
    languages.addSubcommand(new LanguagesOut(BudgetSource.MEASURED));
    languages.addSubcommand(new LanguagesIn(BudgetSource.MEASURED));
    languages.addSubcommand(new LanguagesFit());
    return languages;
  }

  @Override
  public Integer call() {
    throw new ParameterException(
        spec.commandLine(),
        "Say what to do, e.g. readfall languages out EPISODE; readfall languages --help lists it.");
  }
}
