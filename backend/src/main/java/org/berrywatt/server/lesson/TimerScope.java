package org.berrywatt.server.lesson;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What a timer is for, and for whom: a cell and its team, a team, or the whole class when both are null. */
record TimerScope(
        String words, @Nullable UUID teamId, @Nullable UUID cellId) {}
