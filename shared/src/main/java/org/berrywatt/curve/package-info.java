/** Current-voltage curves: the single-diode model and the figures of a measured sweep. */
@NullMarked
package org.berrywatt.curve;

import org.jspecify.annotations.NullMarked;
