/** Leaderboards: the one place where recorded readings become results, and results become places. */
@NullMarked
@ApplicationModule(allowedDependencies = {"platform", "access", "worked", "labday", "team", "cell", "light", "reading"})
package org.berrywatt.server.leaderboard;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
