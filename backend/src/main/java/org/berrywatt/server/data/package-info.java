/** A lab day as plain tables with units, and a description of every column, for whoever reads the numbers afterwards. */
@NullMarked
@ApplicationModule(allowedDependencies = {"platform", "access", "labday", "leaderboard"})
package org.berrywatt.server.data;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
