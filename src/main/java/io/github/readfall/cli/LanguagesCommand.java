package io.github.readfall.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The commands on the other languages of an episode. */
@Command(
    name = "languages",
    description =
        "Export a script for translation, import translations, and fit them into the balloons.",
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
        "Name a command, e.g. readfall languages fit EPISODE; readfall languages --help lists"
            + " all.");
  }
}
