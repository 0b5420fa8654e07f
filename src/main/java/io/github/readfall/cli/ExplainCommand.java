package io.github.readfall.cli;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.cli.report.JsonReport;
import io.github.readfall.cli.report.RuleText;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.rules.RulePage;
import io.github.readfall.rules.RulePages;
import io.github.readfall.series.SeriesStyle;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Explains a rule. */
@Command(
    name = "explain",
    description = {
      "Explain a rule: what it measures, why it matters, its source, and how to set it.",
      "Without RULE, list all rules."
    },
    mixinStandardHelpOptions = true)
final class ExplainCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "RULE",
      description = "The id in brackets after a finding, e.g. words/long.")
  private Optional<String> rule = Optional.empty();

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "PATH",
      description = "A series, an episode or a script, to show the severity and limits set there.")
  private Optional<Path> path = Optional.empty();

  @Option(names = "--json", description = "Print a JSON report and nothing else.")
  private boolean json;

  @Override
  public Integer call() throws CannotProceed {
    HouseStyle style = style();
    PrintWriter out = spec.commandLine().getOut();
    JsonReport report = new JsonReport(Version.number());
    if (rule.isEmpty()) {
      out.print(json ? report.rules(style) + "\n" : RuleText.all(style));
    } else {
      RulePage page = page(rule.get());
      out.print(json ? report.rule(page, style) + "\n" : RuleText.of(page, style));
    }
    return 0;
  }

  private static RulePage page(String id) throws CannotProceed {
    Optional<RulePage> page = RulePages.of(id);
    if (page.isEmpty()) {
      throw new CannotProceed(
          "There is no rule "
              + Refusal.shown(id)
              + "; "
              + RulePages.nearest(id)
                  .map(near -> "the closest is " + near + ", and readfall explain lists all.")
                  .orElse("readfall explain lists all."));
    }
    return page.get();
  }

  private HouseStyle style() throws CannotProceed {
    try {
      return path.isPresent() ? SeriesStyle.at(path.get()).style() : HouseStyle.DEFAULT;
    } catch (UnusablePath e) {
      throw new CannotProceed(e.getMessage());
    }
  }
}
