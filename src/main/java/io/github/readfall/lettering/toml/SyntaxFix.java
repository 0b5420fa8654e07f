package io.github.readfall.lettering.toml;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A frequent typo in TOML, and the line that was meant.
 *
 * @param typo matches the whole line
 * @param sentence advice, before the corrected line
 * @param fixed the line as it should be, with the groups of {@code typo}
 */
record SyntaxFix(Pattern typo, String sentence, String fixed) {

  private static final int LONGEST = 300; // a longer line is no typo
  private static final String KEY = "\\s*([\\w-]+)\\s*=\\s*";

  private static final List<SyntaxFix> ALL =
      List.of(
          of(KEY + "(#[0-9a-fA-F]{3,6})\\b.*", "Put the colour in double quotes", "$1 = \"$2\""),
          of(KEY + "(-?\\d+),(\\d+)\\s*(#.*)?", "Write the number with a point", "$1 = $2.$3"),
          of(KEY + "(-?)\\.(\\d+)\\s*(#.*)?", "Put a 0 before the point", "$1 = $20.$3"),
          of(
              "\\s*([\\w-]+/[\\w-]+)\\s*=\\s*([^#]*?)\\s*(#.*)?",
              "Put the name in double quotes",
              "\"$1\" = $2"),
          of(
              "\\s*\\[(\\w+)\\.([^\\]\".]*[^\\]\".\\w-][^\\]\".]*)\\]?\\s*(#.*)?",
              "Put the name in double quotes",
              "[$1.\"$2\"]"),
          of("\\s*\\[([^\\]#]*?)\\s*(#.*)?", "Close the bracket", "[$1]"),
          of(
              "\\s*([\\w-]*[^\\w\\s\"'.=#\\[-][^\\s\"'.=#]*)\\s*=\\s*(.*?)\\s*",
              "Put the name in double quotes",
              "\"$1\" = $2"),
          of(
              KEY + "([^\"'#\\[{0-9][^\"#]*?)\\s*(#.*)?",
              "Put the text in double quotes",
              "$1 = \"$2\""));

  private static SyntaxFix of(String typo, String sentence, String fixed) {
    return new SyntaxFix(Pattern.compile("^" + typo + "$"), sentence, fixed);
  }

  /** Advice about a line that is not TOML. */
  static String advice(String line) {
    if (line.length() <= LONGEST) {
      for (SyntaxFix fix : ALL) {
        Matcher matcher = fix.typo.matcher(line);
        if (matcher.matches()) {
          return fix.sentence + ": " + Quoted.name(matcher.replaceFirst(fix.fixed)) + ".";
        }
      }
    }
    return "A line is [table], key = number, key = true or key = \"text\"; notes begin with #.";
  }
}
