/** Readings of cells as typed on the meter: dark checks, light readings, load sweeps, light toggles. */
@ApplicationModule(allowedDependencies = {"platform", "access", "typed", "labday", "cell", "light"})
@NullMarked
package org.berrywatt.server.reading;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
