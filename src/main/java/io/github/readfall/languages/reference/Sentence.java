package io.github.readfall.languages.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A stretch of a cue that ends with a mark, or with its line.
 *
 * @param start of its words in the cue's plain text, UTF-16 units
 * @param opening marks before its words, such as a quotation mark or a dash
 * @param words with other marks
 * @param ending marks after its words
 * @param endsLine true if a forced break follows
 */
record Sentence(int start, String opening, String words, String ending, boolean endsLine) {

  private static final String OPENING = "[\\p{Ps}\\p{Pi}\\p{Pf}\"¿¡—–―…-]|\\.{2,}";
  private static final String CLOSING = "[\\p{Pe}\\p{Pi}\\p{Pf}\"]*";
  private static final Pattern ONE =
      Pattern.compile(
          "\\s*(?<opening>(?:"
              + OPENING
              + ")*)\\s*(?<words>.*?)\\s*(?<ending>[.!?…‥؟।—–―-]+"
              + CLOSING
              + "(?=\\s|$)|[。！？…‥]+"
              + CLOSING
              + "|"
              + CLOSING
              + "$)");

  /** The sentences of a plain text, in order. */
  static List<Sentence> of(String plain) {
    List<Sentence> sentences = new ArrayList<>();
    int start = 0;
    for (String line : plain.split("\n", -1)) {
      addAll(line, start, sentences);
      start += line.length() + 1;
    }
    return sentences;
  }

  private static void addAll(String line, int lineStart, List<Sentence> sentences) {
    Matcher matcher = ONE.matcher(line);
    int from = 0;
    while (from < line.length() && matcher.find(from)) {
      boolean ends = matcher.end() == line.length();
      sentences.add(
          new Sentence(
              lineStart + matcher.start("words"),
              matcher.group("opening"),
              matcher.group("words"),
              matcher.group("ending"),
              ends));
      from = Math.max(from + 1, matcher.end());
    }
  }

  int characters() {
    return words.codePointCount(0, words.length());
  }
}
