@NullMarked
package org.berrywatt.statistics;

import org.jspecify.annotations.NullMarked;
