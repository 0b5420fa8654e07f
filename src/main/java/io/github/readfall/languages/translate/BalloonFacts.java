package io.github.readfall.languages.translate;

/**
 * The balloon that a cue has in the script's own language.
 *
 * @param shape as layout.json names it
 * @param widthPx of its outline, in strip pixels
 * @param heightPx of its outline, in strip pixels
 * @param fontPx the em of its letters, in strip pixels
 */
public record BalloonFacts(String shape, double widthPx, double heightPx, double fontPx) {}
