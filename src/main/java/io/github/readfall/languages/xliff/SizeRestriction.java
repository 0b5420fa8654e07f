package io.github.readfall.languages.xliff;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The size restriction of a text, as the standard profiles write it (XLIFF 2.1, 5.7.2.1): {@code
 * max} or {@code min,max}, the most being {@code *} if there is none.
 *
 * @param least 0 or more
 * @param most empty if there is none
 */
record SizeRestriction(int least, OptionalInt most) {

  private static final Pattern WRITTEN = Pattern.compile("(?:(\\d{1,9})\\s*,\\s*)?(\\d{1,9}|\\*)");

  /** The restriction as written; empty if it is none. */
  static Optional<SizeRestriction> of(String written) {
    Matcher parts = WRITTEN.matcher(written.strip());
    if (!parts.matches()) {
      return Optional.empty();
    }
    int least = parts.group(1) == null ? 0 : Integer.parseInt(parts.group(1));
    OptionalInt most =
        parts.group(2).equals("*")
            ? OptionalInt.empty()
            : OptionalInt.of(Integer.parseInt(parts.group(2)));
    return most.isPresent() && most.getAsInt() < least
        ? Optional.empty()
        : Optional.of(new SizeRestriction(least, most));
  }
}
