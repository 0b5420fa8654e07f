package io.github.readfall.window.languages;

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
public record ShownLanguages(String own, String main, Optional<String> beside) {

  /** No script yet. */
  public static final ShownLanguages NOTHING = new ShownLanguages("", "", Optional.empty());

  /** Whether it is the language of the script. */
  public boolean isOwn(String language) {
    return language.equals(own);
  }

  /** Those that are not the script's own. */
  public Set<String> translated() {
    Set<String> languages = new TreeSet<>();
    Optional.of(main).filter(language -> !isOwn(language)).ifPresent(languages::add);
    beside.filter(language -> !isOwn(language)).ifPresent(languages::add);
    return languages;
  }

  /** The language that is worked at: one that is seen and is not the script's own. */
  public Optional<String> worked() {
    return Optional.of(main)
        .filter(language -> !isOwn(language))
        .or(() -> beside.filter(language -> !isOwn(language)));
  }

  /** Whether a language is seen. */
  public boolean shows(String language) {
    return main.equals(language) || beside.filter(language::equals).isPresent();
  }
}
