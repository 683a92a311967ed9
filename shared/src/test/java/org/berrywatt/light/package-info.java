@NullMarked
package org.berrywatt.light;

import org.jspecify.annotations.NullMarked;
