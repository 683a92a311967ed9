/**
 * Numbers with units, as people type them: {@code "60 mV"}, {@code "0,06"} beside a unit, {@code "15 x 15"} in mm. What a
 * number can mean is returned, never guessed.
 */
@NullMarked
package org.berrywatt.quantity;

import org.jspecify.annotations.NullMarked;
