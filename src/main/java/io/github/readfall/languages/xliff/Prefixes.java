package io.github.readfall.languages.xliff;

import java.util.Map;

/**
 * The prefixes of elements at a place of a document.
 *
 * @param core before the core's elements: a prefix and a colon, or nothing
 * @param slr before the size restriction module's
 * @param declaration that an element must make for that, after a space; empty for nothing
 */
record Prefixes(String core, String slr, String declaration) {

  /** The prefixes in a document of our own. */
  static final Prefixes OWN = new Prefixes("", "slr:", "");

  /**
   * The prefixes in an element.
   *
   * @param scope its prefixes and their namespaces
   * @param core prefix of the document's core elements
   */
  static Prefixes in(Map<String, String> scope, String core) {
    return scope.entrySet().stream()
        .filter(each -> each.getValue().equals(Names.SLR) && !each.getKey().isEmpty())
        .map(Map.Entry::getKey)
        .sorted()
        .findFirst()
        .map(prefix -> new Prefixes(core, prefix + ":", ""))
        .orElseGet(() -> declaring(core, free(scope)));
  }

  private static Prefixes declaring(String core, String prefix) {
    return new Prefixes(core, prefix + ":", " xmlns:" + prefix + "=\"" + Names.SLR + "\"");
  }

  private static String free(Map<String, String> scope) {
    int number = 1;
    String prefix = "slr";
    while (scope.containsKey(prefix)) {
      prefix = "slr" + ++number;
    }
    return prefix;
  }
}
