package io.github.readfall.cli.report;

import io.github.readfall.base.finding.Severity;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.rules.RulePage;
import io.github.readfall.rules.RulePage.Part;
import io.github.readfall.rules.RulePages;
import java.util.List;
import java.util.OptionalDouble;

/** The pages of rules for people. */
public final class RuleText {

  /** The usual width of a terminal. */
  private static final int WIDTH = 78;

  private static final int PHRASE = 72;
  private static final String INDENT = "  ";

  private RuleText() {}

  /** Everything about one rule, with its settings in a house style. */
  public static String of(RulePage page, HouseStyle style) {
    StringBuilder out = new StringBuilder();
    out.append(page.id()).append('\n').append(state(page, style)).append('\n');
    page.parts()
        .forEach(
            (part, markdown) -> {
              out.append('\n').append(part.heading()).append('\n');
              Plain.lines(markdown, WIDTH - INDENT.length())
                  .forEach(line -> out.append((INDENT + line).stripTrailing()).append('\n'));
            });
    return out.toString();
  }

  /** For example {@code warning, limit 25}, and its default if that is another. */
  private static String state(RulePage page, HouseStyle style) {
    String now = state(severity(page, style), limit(page, style));
    String usual = state(page.severity(), page.limit());
    return now.equals(usual) ? now : now + " in series.toml (default: " + usual + ")";
  }

  private static String state(Severity severity, OptionalDouble limit) {
    return severity.word()
        + (limit.isPresent()
            ? ", limit " + JsonReport.number(limit.getAsDouble()).toPlainString()
            : "");
  }

  static Severity severity(RulePage page, HouseStyle style) {
    return style.severity(page.id(), page.severity());
  }

  static OptionalDouble limit(RulePage page, HouseStyle style) {
    return page.limit().isPresent()
        ? OptionalDouble.of(style.limit(page.id(), page.limit().getAsDouble()))
        : OptionalDouble.empty();
  }

  /** Everything that can be found, a line each. */
  public static String all(HouseStyle style) {
    return "Rules\n\n"
        + table(RulePages.rules(), style)
        + "\nFindings of reading, setting, placing and planning\n\n"
        + table(RulePages.others(), style)
        + "\nreadfall explain ID explains one of them.\n";
  }

  private static String table(List<RulePage> pages, HouseStyle style) {
    List<List<String>> rows = pages.stream().map(page -> row(page, style)).toList();
    return TextTable.of(rows, List.of(false, false, false));
  }

  private static List<String> row(RulePage page, HouseStyle style) {
    return List.of(page.id(), severity(page, style).word(), phrase(page));
  }

  /** Its finding in a few words: as much of the first sentence as there is room for. */
  static String phrase(RulePage page) {
    String text = Plain.text(page.part(Part.FINDS).orElse("")).replace('\n', ' ');
    String first = text.split("[.:;](?: |$)", -1)[0];
    List<String> lines = Plain.lines(first, PHRASE);
    return lines.size() == 1 ? first : lines.get(0).replaceFirst("[ ,]+$", "") + " …";
  }
}
