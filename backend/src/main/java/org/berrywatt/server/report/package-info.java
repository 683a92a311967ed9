/** The report of a day: what stands beside results and findings, and the teacher's comments. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {"platform", "access", "typed", "labday", "team", "cell", "reading", "leaderboard"})
package org.berrywatt.server.report;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
