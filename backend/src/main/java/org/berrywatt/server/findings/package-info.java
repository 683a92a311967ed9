/** Findings: what a class's cells say about one build parameter. */
@NullMarked
@ApplicationModule(allowedDependencies = {"platform", "access", "labday", "cell", "leaderboard"})
package org.berrywatt.server.findings;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
