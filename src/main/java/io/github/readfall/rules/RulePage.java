package io.github.readfall.rules;

import io.github.readfall.base.finding.Severity;
import io.github.readfall.rules.model.RuleSpec;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The page about a rule, or about another kind of finding.
 *
 * @param id e.g. {@code words/long}
 * @param severity unless the person sets another; the most severe one if it depends
 * @param limit unless the person sets another, in the unit of the rule; empty if it has none
 * @param limitMeaning a sentence about the limit and its unit; empty if there is no limit
 * @param parts in the order of {@link Part}, each in Markdown
 */
public record RulePage(
    String id,
    Severity severity,
    OptionalDouble limit,
    String limitMeaning,
    Map<Part, String> parts) {

  /** A part of a page, in the order of the page. */
  public enum Part {
    FINDS("What it finds"),
    WHY("Why a reader minds"),
    EXAMPLE("Example"),
    MEND("How to put it right"),
    SET("How to set it"),
    SOURCE("Source");

    private final String heading;

    Part(String heading) {
      this.heading = heading;
    }

    /** Its heading, without a full stop. */
    public String heading() {
      return heading;
    }

    /** The words that begin it on a page. */
    private String mark() {
      return "**" + heading + ".** ";
    }
  }

  public RulePage {
    Map<Part, String> inOrder = new LinkedHashMap<>();
    for (Part part : Part.values()) {
      Optional.ofNullable(parts.get(part)).ifPresent(text -> inOrder.put(part, text));
    }
    parts = Collections.unmodifiableMap(inOrder);
  }

  /** A part; empty if the page does not have it. */
  public Optional<String> part(Part part) {
    return Optional.ofNullable(parts.get(part));
  }

  /** Reads the page of a rule: a title, and the parts one after the other. */
  static RulePage read(RuleSpec rule, String markdown) {
    Map<Part, String> parts = new LinkedHashMap<>();
    for (Part part : Part.values()) {
      int from = markdown.indexOf(part.mark());
      if (from >= 0) {
        int start = from + part.mark().length();
        parts.put(part, markdown.substring(start, end(markdown, start)).strip());
      }
    }
    return new RulePage(rule.id(), rule.severity(), rule.limit(), rule.limitMeaning(), parts);
  }

  private static int end(String markdown, int start) {
    return List.of(Part.values()).stream()
        .mapToInt(part -> markdown.indexOf("\n" + part.mark(), start))
        .filter(at -> at >= 0)
        .min()
        .orElse(markdown.length());
  }
}
