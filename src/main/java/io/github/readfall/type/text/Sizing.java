package io.github.readfall.type.text;

/**
 * How large a language is lettered, and how far apart its lines are.
 *
 * @param basis which height decides its size
 * @param emFactor for {@link SizeBasis#EM}: its em over the Latin em
 * @param leadingFactor its leading over the series' leading; more than 1 where marks stack
 */
public record Sizing(SizeBasis basis, double emFactor, double leadingFactor) {}
