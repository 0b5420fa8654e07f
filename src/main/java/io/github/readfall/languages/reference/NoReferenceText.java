package io.github.readfall.languages.reference;

import io.github.readfall.type.text.Language;

/** A language without a reference text. The message is one plain sentence for people. */
public final class NoReferenceText extends Exception {

  private static final long serialVersionUID = 1;

  private final String sentence;

  NoReferenceText(Language language) {
    super(language.tag());
    this.sentence =
        "There is no reference text in the language \""
            + language.tag()
            + "\", so nothing can be measured in it; take one of the languages of"
            + " docs/languages-lengths.md, or work without lengths in this one.";
  }

  @Override
  public String getMessage() {
    return sentence;
  }
}
