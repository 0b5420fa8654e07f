package io.github.readfall.type.text;

/**
 * The size of a language's letters, and the distance of its lines.
 *
 * @param basis the height that decides its size
 * @param emFactor its em over the Latin em, for {@link SizeBasis#EM}
 * @param leadingFactor its leading over the series' leading; more than 1 if marks stack
 */
public record Sizing(SizeBasis basis, double emFactor, double leadingFactor) {}
