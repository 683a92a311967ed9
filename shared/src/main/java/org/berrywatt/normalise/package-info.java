/** From what a meter showed to a result at reference conditions, with its worked calculation. */
@NullMarked
package org.berrywatt.normalise;

import org.jspecify.annotations.NullMarked;
