@NullMarked
package org.berrywatt.curve;

import org.jspecify.annotations.NullMarked;
