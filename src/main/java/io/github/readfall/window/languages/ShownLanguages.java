package io.github.readfall.window.languages;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The languages in which the strip is shown, as BCP 47 tags.
 *
 * @param own of the script
 * @param main of strip and phone
 * @param beside of the second strip and phone, if they are shown
 */
public record ShownLanguages(String own, String main, Optional<String> beside) {

  /** The languages without a script. */
  public static final ShownLanguages NOTHING = new ShownLanguages("", "", Optional.empty());

  /** Whether a language is that of the script. */
  public boolean isOwn(String language) {
    return language.equals(own);
  }

  /** The languages that are not the script's own. */
  public Set<String> translated() {
    Set<String> languages = new TreeSet<>();
    Optional.of(main).filter(language -> !isOwn(language)).ifPresent(languages::add);
    beside.filter(language -> !isOwn(language)).ifPresent(languages::add);
    return languages;
  }

  /** The language to translate into: one that is shown and is not the script's own. */
  public Optional<String> worked() {
    return Optional.of(main)
        .filter(language -> !isOwn(language))
        .or(() -> beside.filter(language -> !isOwn(language)));
  }

  /** Whether a language is shown. */
  public boolean shows(String language) {
    return main.equals(language) || beside.filter(language::equals).isPresent();
  }
}
