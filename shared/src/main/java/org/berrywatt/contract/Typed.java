package org.berrywatt.contract;

import org.jspecify.annotations.Nullable;

/**
 * A number as a person typed it, for example {@code "0,06"} with unit key {@code "V"}, or {@code "60 mV"} with the unit
 * inside the text. The server's reading of it is the truth.
 *
 * @param text the typed characters, untouched
 * @param unit key of the unit chosen beside the field; a unit inside the text wins
 */
public record Typed(String text, @Nullable String unit) {}
