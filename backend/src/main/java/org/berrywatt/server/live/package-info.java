/** The live leaderboard and the room: snapshots, numbered messages and beats over a socket that takes nothing. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "platform",
            "labday",
            "team",
            "cell",
            "light",
            "reading",
            "safety",
            "lesson",
            "leaderboard"
        })
package org.berrywatt.server.live;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
