package io.github.readfall.rules;

import io.github.readfall.base.finding.Spelling;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.rules.voice.SeriesBook;
import io.github.readfall.script.Letters;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * The pages about all findings: one for each rule, and one for each family of findings from
 * reading, setting, placing and planning.
 */
public final class RulePages {

  /** Pages with a table: id, severity, meaning, how to fix it. */
  private static final List<String> FAMILIES =
      List.of("art", "font", "ignored", "language", "layout", "place", "plan", "script", "style");

  private static final int CELLS = 4;

  private RulePages() {}

  /** The pages of all rules, those about a series among them, sorted by id. */
  public static List<RulePage> rules() {
    return Stream.concat(
            RuleBook.all().stream().map(rule -> ofRule(rule.spec())),
            SeriesBook.all().stream().map(rule -> ofRule(rule.spec())))
        .sorted(Comparator.comparing(RulePage::id))
        .toList();
  }

  /** Findings that no rule makes, family by family. */
  public static List<RulePage> others() {
    return FAMILIES.stream().flatMap(RulePages::entries).toList();
  }

  /** Everything about an id. */
  public static Optional<RulePage> of(String id) {
    return all().filter(page -> page.id().equals(id)).findFirst();
  }

  /** The id that was probably meant: by its second half, or with a typo. */
  public static Optional<String> nearest(String typed) {
    List<String> ids = all().map(RulePage::id).toList();
    return ids.stream()
        .filter(id -> id.endsWith("/" + typed))
        .findFirst()
        .or(() -> Spelling.nearestName(typed, ids, Letters::fold));
  }

  private static Stream<RulePage> all() {
    return Stream.concat(rules().stream(), others().stream());
  }

  private static RulePage ofRule(RuleSpec rule) {
    return RulePage.read(rule, page(rule.id()));
  }

  private static Stream<RulePage> entries(String family) {
    return page(family)
        .lines()
        .map(line -> line.split(" *\\| *", -1))
        .filter(cells -> cells.length == CELLS + 2 && cells[1].contains("/"))
        .map(cells -> entry(List.of(cells)));
  }

  /** A row of a table; the cells before its first bar and after its last one are empty. */
  private static RulePage entry(List<String> cells) {
    String id = cells.get(1).replace("`", "");
    return new RulePage(
        id,
        OtherSeverities.of(id),
        OptionalDouble.empty(),
        "",
        Map.of(RulePage.Part.FINDS, cells.get(3), RulePage.Part.MEND, cells.get(4)));
  }

  private static String page(String name) {
    String file = "pages/" + name + ".md";
    try (InputStream in = RulePages.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException("the page " + file + " is missing");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
