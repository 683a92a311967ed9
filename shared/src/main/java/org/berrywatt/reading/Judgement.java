package org.berrywatt.reading;

import org.jspecify.annotations.Nullable;

/**
 * What to think of a number.
 *
 * @param likelyUnitKey the unit in which the same digits would be usual, such as mV for {@code 400 V}; null when the number
 *     is fine or hardly unusual, or when no unit helps
 */
public record Judgement(Verdict verdict, @Nullable String likelyUnitKey) {}
