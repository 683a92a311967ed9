/**
 * Readings from the meter: which values are believable, and whether a cell answers to light at all.
 */
@NullMarked
package org.berrywatt.reading;

import org.jspecify.annotations.NullMarked;
