@NullMarked
package org.berrywatt.plan;

import org.jspecify.annotations.NullMarked;
