/** The plan of a lab day: what is varied, which team builds what, and what became of it at the benches. */
@ApplicationModule(
        allowedDependencies = {"platform", "access", "typed", "labday", "team", "safety", "cell", "leaderboard"})
@NullMarked
package org.berrywatt.server.plan;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
