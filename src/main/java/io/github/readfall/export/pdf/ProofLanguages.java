package io.github.readfall.export.pdf;

import io.github.readfall.script.Header;
import io.github.readfall.script.Script;
import io.github.readfall.script.lines.LanguageTag;
import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.Languages;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/**
 * The languages of a proof.
 *
 * @param strip language of the lettering
 * @param script language in which the script describes its panels
 * @param notes language of findings and figures
 */
record ProofLanguages(Language strip, Language script, Language notes) {

  private static final String ENGLISH = "en";
  private static final String HEADER = "Language";

  static ProofLanguages of(Script script) {
    String written =
        script.headers().stream()
            .filter(header -> header.key().equalsIgnoreCase(HEADER))
            .map(Header::value)
            .flatMap(value -> LanguageTag.tag(value).stream())
            .findFirst()
            .orElse(ENGLISH);
    return new ProofLanguages(
        Languages.of(script.language()), Languages.of(written), Languages.of(ENGLISH));
  }

  /** Marks an element's language if it is not that of the strip. */
  void mark(PDStructureElement element, Language language) {
    if (!language.tag().equals(strip.tag())) {
      element.setLanguage(language.tag());
    }
  }
}
