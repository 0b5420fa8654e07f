package io.github.readfall.type.text;

import com.ibm.icu.util.LocaleData;
import com.ibm.icu.util.ULocale;
import io.github.readfall.base.OneCall;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Tells what each straight quote of a text stands for, and finds the sign that the language prints:
 * its quotation marks by CLDR (Unicode LDML part 2, "Delimiters"), the apostrophe U+2019 (The
 * Unicode Standard, chapter 6, "Apostrophes"). Feet, inches and the marks of Hebrew abbreviations
 * stay as typed.
 */
@OneCall
final class Quotes {

  private static final char DOUBLE = '"';
  private static final char SINGLE = '\'';
  private static final String APOSTROPHE = "’";
  private static final String OPENING = "([{¿¡-–—«„“‘‚「『";

  /** English words that begin with an apostrophe. */
  private static final Set<String> CLIPPED =
      Set.of(
          "bout", "cause", "cos", "cuz", "em", "er", "fraid", "im", "kay", "n", "neath", "nother",
          "nuff", "round", "scuse", "sup", "tain", "til", "till", "tis", "tisn", "tude", "twas",
          "twasn", "tween", "twere", "twill", "twould");

  private static final Pattern WORD = Pattern.compile("\\G[\\p{L}\\p{M}]+");
  private static final Pattern DECADE = Pattern.compile("\\G\\d\\ds?(?![\\p{L}\\d'])");
  private static final Pattern FEET_AND_INCHES = Pattern.compile("\\d['′]\\d{1,2}$");

  private final String text;
  private final boolean spaced;
  private final boolean roomy;
  private final String language;
  private final LocaleData signs;
  private final IntPredicate has;
  private final Deque<Character> open = new ArrayDeque<>();
  private final List<Replacement> found = new ArrayList<>();

  private Quotes(String text, Language language, IntPredicate has) {
    this.text = text;
    this.spaced = language.hasCapitals();
    this.roomy = language.habits().conventions().contains(Convention.NARROW_SPACES);
    this.language = language.locale().getLanguage();
    this.signs = LocaleData.getInstance(ULocale.forLanguageTag(language.tag()));
    this.has = has;
  }

  /** The straight quotes of a text that are lettered otherwise. */
  static List<Replacement> in(String text, Language language, IntPredicate has) {
    if (text.indexOf(DOUBLE) < 0 && text.indexOf(SINGLE) < 0) {
      return List.of();
    }
    Quotes quotes = new Quotes(text, language, has);
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) == DOUBLE) {
        quotes.takeDouble(i);
      } else if (text.charAt(i) == SINGLE) {
        quotes.takeSingle(i);
      }
    }
    return List.copyOf(quotes.found);
  }

  private void takeDouble(int i) {
    if (opens(i)) {
      open(i, DOUBLE, open.contains(DOUBLE));
    } else if (!isInch(i) && !isInHebrewWord(i)) {
      close(i, DOUBLE);
    }
  }

  private void takeSingle(int i) {
    char before = at(i - 1);
    char after = at(i + 1);
    if (isWordLetter(before) && isWordLetter(after)) {
      putBetween(i, before, after);
    } else if (opens(i)) {
      openSingle(i);
    } else if (open.contains(SINGLE) && !closesLater(i)) {
      close(i, SINGLE);
    } else if (isCased(before) || (Character.isLetter(after) && !isHebrew(before))) {
      put(i, APOSTROPHE);
    }
  }

  /** Between digits it is a foot. */
  private void putBetween(int i, char before, char after) {
    if (isCased(before) || isCased(after)) {
      put(i, APOSTROPHE);
    }
  }

  private void openSingle(int i) {
    if (isClipped(i) || (spaced && !closesLater(i))) {
      put(i, APOSTROPHE);
    } else {
      open(i, SINGLE, true);
    }
  }

  /** A letter with which an apostrophe can be in one word; a digit only before letters. */
  private boolean isWordLetter(char c) {
    return isCased(c) || Character.isDigit(c);
  }

  private static boolean isCased(char c) {
    return Character.isUpperCase(c) || Character.isLowerCase(c);
  }

  private boolean isInch(int i) {
    boolean afterDigit = Character.isDigit(at(i - 1));
    String before = text.substring(Math.max(0, i - 4), i);
    return afterDigit && (!open.contains(DOUBLE) || FEET_AND_INCHES.matcher(before).find());
  }

  private boolean isInHebrewWord(int i) {
    return isHebrew(at(i - 1)) && isHebrew(at(i + 1));
  }

  private static boolean isHebrew(char c) {
    return Character.UnicodeScript.of(c) == Character.UnicodeScript.HEBREW;
  }

  private boolean opens(int i) {
    char before = at(i - 1);
    char after = at(i + 1);
    if (after == ' ' || ")]},;:.!?".indexOf(after) >= 0) {
      return false;
    }
    boolean apart = before == ' ' || OPENING.indexOf(before) >= 0 || isOpenQuote(i - 1);
    boolean amid = !spaced && !isHebrew(before) && !open.contains(text.charAt(i));
    return apart || amid;
  }

  private boolean isOpenQuote(int i) {
    return i >= 0
        && "\"'".indexOf(text.charAt(i)) >= 0
        && (at(i - 1) == ' ' || OPENING.indexOf(at(i - 1)) >= 0);
  }

  /** The character at an index; a space for any white space and beyond the ends. */
  private char at(int i) {
    return i < 0 || i >= text.length() || Character.isWhitespace(text.charAt(i))
        ? ' '
        : text.charAt(i);
  }

  private boolean isClipped(int i) {
    if (DECADE.matcher(text).find(i + 1)) {
      return true;
    }
    Matcher word = WORD.matcher(text);
    if (!language.equals("en") || !word.find(i + 1)) {
      return false;
    }
    String clipped = word.group().toLowerCase(Locale.ROOT);
    return CLIPPED.contains(clipped) && (clipped.equals("n") || at(word.end()) != SINGLE);
  }

  /** Returns true if a later quote can close before another opens. */
  private boolean closesLater(int from) {
    for (int i = from + 1; i < text.length(); i++) {
      if (text.charAt(i) == SINGLE && !(isWordLetter(at(i - 1)) && isWordLetter(at(i + 1)))) {
        return !opens(i);
      }
    }
    return false;
  }

  private void open(int i, char typed, boolean inner) {
    open.push(inner && typed == DOUBLE ? SINGLE : typed);
    String sign =
        signs.getDelimiter(inner ? LocaleData.ALT_QUOTATION_START : LocaleData.QUOTATION_START);
    put(i, roomy && sign.equals("«") ? sign + " " : sign);
  }

  private void close(int i, char typed) {
    boolean inner = typed == SINGLE || (!open.isEmpty() && open.peek() == SINGLE);
    if (!open.isEmpty()) {
      open.pop();
    }
    String sign =
        signs.getDelimiter(inner ? LocaleData.ALT_QUOTATION_END : LocaleData.QUOTATION_END);
    put(i, roomy && sign.equals("»") ? " " + sign : sign);
  }

  private void put(int i, String sign) {
    if (sign.codePoints().allMatch(c -> c == ' ' || has.test(c))) {
      found.add(new Replacement(i, i + 1, sign));
    }
  }
}
