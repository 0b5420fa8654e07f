package io.github.readfall.app;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The languages in which the strip is looked at, as BCP 47 tags.
 *
 * @param own the script's
 * @param main that of strip and phone
 * @param beside that of the second strip and phone, if there are any
 */
record LookedAt(String own, String main, Optional<String> beside) {

  /** No script yet. */
  static final LookedAt NOTHING = new LookedAt("", "", Optional.empty());

  /** Whether it is the language of the script. */
  boolean isOwn(String language) {
    return language.equals(own);
  }

  /** Those that are not the script's own. */
  Set<String> translated() {
    Set<String> languages = new TreeSet<>();
    Optional.of(main).filter(language -> !isOwn(language)).ifPresent(languages::add);
    beside.filter(language -> !isOwn(language)).ifPresent(languages::add);
    return languages;
  }

  /** The language that is worked at: one that is seen and is not the script's own. */
  Optional<String> worked() {
    return Optional.of(main)
        .filter(language -> !isOwn(language))
        .or(() -> beside.filter(language -> !isOwn(language)));
  }

  /** Whether a language is seen. */
  boolean shows(String language) {
    return main.equals(language) || beside.filter(language::equals).isPresent();
  }
}
