package io.github.readfall.art;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Finds oddities of the pages of a strip's art that can be read. */
public final class ArtFindings {

  private static final Pattern NUMBERED = Pattern.compile("(.*?)(\\d{1,6})([^\\d]*)\\.\\w+");

  /** In a larger gap between two numbers no page counts as missing. House default, no source. */
  private static final int MOST_MISSING = 9;

  private ArtFindings() {}

  /** Findings about pages that cannot be read, about sizes, and about missing pages. */
  public static List<Finding> of(StripArt art) {
    List<Finding> findings = new ArrayList<>();
    for (String problem : art.problems()) {
      findings.add(
          finding(
              "art/unreadable", Severity.WARNING, problem, "Till then the strip lacks this page."));
    }
    Map<Integer, List<ArtPage>> byWidth =
        art.pages().stream()
            .collect(Collectors.groupingBy(ArtPage::widthPx, TreeMap::new, Collectors.toList()));
    if (byWidth.size() > 1) {
      findings.add(widths(byWidth));
    }
    byWidth.forEach(
        (widthPx, pages) -> {
          if (widthPx != art.widthPx()) {
            findings.add(scaled(widthPx, art.widthPx()));
          }
        });
    findings.addAll(
        missing(art.pages().stream().map(page -> UnreadableReason.name(page.file())).toList()));
    return findings;
  }

  private static Finding widths(Map<Integer, List<ArtPage>> byWidth) {
    String widths =
        byWidth.entrySet().stream()
            .map(
                e -> e.getKey() + " px (" + UnreadableReason.name(e.getValue().get(0).file()) + ")")
            .collect(Collectors.joining(", "));
    return finding(
        "art/widths",
        Severity.WARNING,
        "The pages of the art are of different widths: " + widths + ".",
        "Save all pages at one width; until then each is scaled to the strip's.");
  }

  private static Finding scaled(int widthPx, int stripPx) {
    return Finding.of(
        "art/scaled",
        Severity.NOTE,
        Where.everywhere(),
        Phrase.of(
            "The art is " + widthPx + " px wide, the strip " + stripPx + " px, so it is scaled."),
        Phrase.of("There is nothing to do; if you always draw at " + widthPx + " px, set it in ")
            .houseStyle()
            .then("."));
  }

  /** Numbers missing among those of pages with the same name. */
  private static List<Finding> missing(List<String> names) {
    Map<String, TreeMap<Integer, String>> rows = new TreeMap<>();
    for (String name : names) {
      Matcher parts = NUMBERED.matcher(name);
      if (parts.matches()) {
        rows.computeIfAbsent(parts.group(1) + "#" + parts.group(3), row -> new TreeMap<>())
            .put(Integer.parseInt(parts.group(2)), name);
      }
    }
    return rows.values().stream().flatMap(row -> gaps(row).stream()).toList();
  }

  private static List<Finding> gaps(NavigableMap<Integer, String> row) {
    List<Finding> gaps = new ArrayList<>();
    int before = row.firstKey();
    for (Map.Entry<Integer, String> page : row.tailMap(before, false).entrySet()) {
      int lacking = page.getKey() - before - 1;
      if (lacking > 0 && lacking <= MOST_MISSING) {
        gaps.add(missing(before, page.getKey(), row));
      }
      before = page.getKey();
    }
    return gaps;
  }

  private static Finding missing(int before, int after, Map<Integer, String> row) {
    int lacking = after - before - 1;
    String pages =
        lacking == 1
            ? "page " + (before + 1) + " seems"
            : "pages " + (before + 1) + " to " + (after - 1) + " seem";
    return finding(
        "art/page-missing",
        Severity.WARNING,
        "Between " + row.get(before) + " and " + row.get(after) + " " + pages + " to be missing.",
        "Put it there, or number the pages without a gap; until then one follows the other.");
  }

  private static Finding finding(String rule, Severity severity, String message, String advice) {
    return Finding.of(rule, severity, Where.everywhere(), message, advice);
  }
}
