/**
 * Whole class days made up with a known truth, read with errors of the stated size and put through the same calculation as a
 * real day: how often the stated intervals and chances are right.
 */
@NullMarked
package org.berrywatt.calibration;

import org.jspecify.annotations.NullMarked;
