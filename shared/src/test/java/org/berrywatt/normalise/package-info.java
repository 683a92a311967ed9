@NullMarked
package org.berrywatt.normalise;

import org.jspecify.annotations.NullMarked;
