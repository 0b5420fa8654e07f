package io.github.readfall.finding;

/**
 * The number that proves a finding.
 *
 * @param measured what was found
 * @param limit what the house style asks for, in the same unit
 * @param unit of both, as printed, e.g. {@code arcmin}, {@code px}, {@code words}
 */
public record Measurement(double measured, double limit, String unit) {}
