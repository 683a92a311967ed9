@NullMarked
package org.berrywatt.findings;

import org.jspecify.annotations.NullMarked;
