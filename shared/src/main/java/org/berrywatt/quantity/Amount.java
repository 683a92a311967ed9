package org.berrywatt.quantity;

/**
 * A typed number that was understood.
 *
 * @param text the typed characters; for a choice among readings a spelling that means this one alone
 * @param unitKey key of the unit the number was given in
 * @param quantity what it measures
 * @param valueSi value in the SI unit of the quantity, finite
 * @param resolutionSi one step of the last typed digit, in (0, ∞): {@code "0.50 V"} has 0.01 V, {@code "0.5 V"} 0.1 V
 */
public record Amount(String text, String unitKey, Quantity quantity, double valueSi, double resolutionSi) {}
