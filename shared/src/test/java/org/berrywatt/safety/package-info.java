@NullMarked
package org.berrywatt.safety;

import org.jspecify.annotations.NullMarked;
