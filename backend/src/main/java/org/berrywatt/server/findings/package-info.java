/** Findings: what a class's cells say about their build parameters. */
@NullMarked
@ApplicationModule(allowedDependencies = {"platform", "access", "typed", "labday", "cell", "light", "leaderboard"})
package org.berrywatt.server.findings;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
