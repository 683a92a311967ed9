/** A whole lab day as one file: written, read on another server, and deleted for good. */
@NullMarked
@ApplicationModule(allowedDependencies = {"platform", "access", "labday", "leaderboard"})
package org.berrywatt.server.archive;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
