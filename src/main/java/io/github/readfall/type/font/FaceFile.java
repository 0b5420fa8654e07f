package io.github.readfall.type.font;

import java.nio.file.Path;

/**
 * One font file on the shelf, not yet opened.
 *
 * @param id how reports name it, e.g. {@code fonts-open/family/File.ttf}; never machine dependent
 * @param path where it lies
 * @param family the family a person knows it by
 * @param weight 100 to 900, 400 is regular
 * @param italic whether its letters are drawn slanted
 * @param barredCapitalI whether every capital I has bars, which only the pronoun wants: such a face
 *     is lettered as written, not in capitals, unless the style says otherwise
 * @param sha256 of the file, in lower-case hexadecimal; empty where nothing was promised
 */
public record FaceFile(
    String id,
    Path path,
    String family,
    int weight,
    boolean italic,
    boolean barredCapitalI,
    String sha256) {}
