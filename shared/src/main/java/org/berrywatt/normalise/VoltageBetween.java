package org.berrywatt.normalise;

/**
 * How a voltage was brought to the reference light between the laws of an ideal diode and of a leaky cell.
 *
 * @param fromV under the light from which the laws carry it
 * @param ratio of the reference light over that light
 */
record VoltageBetween(VoltageBounds bounds, Term fromV, Ratio ratio) {}
