/** The teacher's attention list: what of everything recorded needs a person next. */
@ApplicationModule(
        allowedDependencies = {
            "platform",
            "access",
            "typed",
            "labday",
            "team",
            "safety",
            "cell",
            "light",
            "reading",
            "lesson",
            "leaderboard"
        })
@NullMarked
package org.berrywatt.server.desk;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
