package io.github.readfall.lettering.style;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.lettering.toml.TomlValue;
import io.github.readfall.lettering.toml.UnchangeableText;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tomlj.Toml;
import org.tomlj.TomlParseResult;

/**
 * For random texts and changes, all other values and all other lines are as they were. Values are
 * asked of the TOML library itself, lines of the text.
 */
class StyleTextPropertyTest {

  private static final int TEXTS = 400;
  private static final List<String> NAMES = List.of("ILSE", "\"Old Man\"", "'a.b'", "x-1");
  private static final List<String> KEYS = List.of("size", "slant", "\"words/long\"", "face");
  private static final List<String> VALUES =
      List.of(
          "1",
          "-0.25",
          "true",
          "\"# no note\"",
          "'it is \"so\"'",
          "\"esc \\\" ]\"",
          "[1, 2]",
          "[ # first ]\n  \"a,b\", # second }\n  'c',\n]",
          "{ a = 1, b.c = [ {}, { d = '}' } ] }",
          "\"\"\"\n[voices.ILSE]\nsize = 3 # \\\"\"\"\"\"\"",
          "'''\\\n x = [ '''",
          "1979-05-27 07:32:00",
          "0xFF",
          "inf");

  private static <T> T one(SplittableRandom random, List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  /** A text with tables in headers, in braces and in dotted keys; some are no TOML at all. */
  private static String text(SplittableRandom random) {
    StringBuilder text = new StringBuilder();
    int lines = 1 + random.nextInt(12);
    for (int i = 0; i < lines; i++) {
      String indent = random.nextInt(4) == 0 ? "  " : "";
      String note = random.nextInt(3) == 0 ? "  # [x] = \"1" : "";
      String key = one(random, KEYS);
      text.append(indent)
          .append(
              switch (random.nextInt(7)) {
                case 0 -> "";
                case 1 -> "# " + key + " = 1";
                case 2, 3 -> "[voices." + one(random, NAMES) + "]" + note;
                case 4 -> "[limits]" + note;
                case 5 -> one(random, NAMES) + "." + key + " = " + one(random, VALUES) + note;
                default -> key + (random.nextBoolean() ? " = " : "=") + one(random, VALUES) + note;
              })
          .append("\n");
    }
    if (random.nextInt(4) == 0) {
      text.insert(0, "manners = { shout = { size = 2, " + one(random, KEYS) + " = 1 }, w = {} }\n");
    }
    String whole = random.nextInt(4) == 0 ? text.substring(0, text.length() - 1) : text.toString();
    String ended = random.nextInt(3) == 0 ? whole.replace("\n", "\r\n") : whole;
    return (random.nextInt(5) == 0 ? "\uFEFF" : "") + ended;
  }

  /** Paths that may be there and paths that are not. */
  private static List<String> path(SplittableRandom random) {
    String name = bare(one(random, NAMES));
    String key = bare(one(random, KEYS));
    return switch (random.nextInt(4)) {
      case 0 -> List.of("limits", key);
      case 1 -> List.of("manners", random.nextBoolean() ? "shout" : "w", key);
      case 2 -> List.of("voices", name, name, key);
      default -> List.of("voices", name, key);
    };
  }

  private static String bare(String quoted) {
    return quoted.replaceAll("[\"']", "");
  }

  private static TomlValue value(SplittableRandom random) {
    return switch (random.nextInt(3)) {
      case 0 -> new TomlValue.Figure(random.nextInt(2000) / 8.0);
      case 1 -> new TomlValue.Truth(random.nextBoolean());
      default -> new TomlValue.Words("a\"b\\c # " + random.nextInt(9));
    };
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void allOtherValuesAndLinesStayAsTheyWere(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int changes = 0;
    for (int i = 0; i < TEXTS; i++) {
      String before = text(random);
      List<String> path = path(random);
      try {
        StyleText read = StyleText.of(before, "series.toml");
        boolean takes = random.nextInt(3) == 0;
        StyleText after = takes ? read.without(path) : read.with(path, value(random));
        check(before, after, path, takes);
        changes += after.text().equals(before) ? 0 : 1;
      } catch (UnchangeableText refused) {
        assertTrue(String.valueOf(refused.getMessage()).contains(" by hand"));
      }
    }
    assertTrue(changes > TEXTS / 8, "only " + changes + " texts were changed");
  }

  private static void check(String before, StyleText after, List<String> path, boolean takes) {
    String both = before + "\n=== " + path + " ===>\n" + after.text();
    Map<String, String> was = leaves(before);
    Map<String, String> is = leaves(after.text());
    String key = String.join("\u0000", path);
    was.remove(key);
    assertEquals(takes, is.remove(key) == null, both);
    assertEquals(was, is, both);
    List<String> lost = new ArrayList<>(lines(before));
    lines(after.text()).forEach(lost::remove);
    assertTrue(lost.size() <= 4, both); // the longest value has four lines
    Set<String> notes =
        new LinkedHashSet<>(lines(before).stream().filter(StyleTextPropertyTest::isNote).toList());
    notes.removeAll(lines(after.text()));
    assertEquals(Set.of(), notes, both);
  }

  private static List<String> lines(String text) {
    return List.of(text.replace("\uFEFF", "").split("(?<=\n)", -1));
  }

  private static boolean isNote(String line) {
    return line.strip().startsWith("# ") && line.endsWith("\n");
  }

  /** Every value that is no table, as the library has it; a list or a table in one as JSON. */
  private static Map<String, String> leaves(String text) {
    TomlParseResult read = Toml.parse(text.replace("\uFEFF", ""));
    assertEquals(List.of(), read.errors());
    Map<String, String> leaves = new TreeMap<>();
    read.entryPathSet(false)
        .forEach(
            entry ->
                leaves.put(
                    String.join("\u0000", entry.getKey()),
                    entry.getValue() instanceof org.tomlj.TomlArray list
                        ? list.toJson()
                        : entry.getValue().toString()));
    return leaves;
  }
}
