package org.berrywatt.server.cell;

import org.jspecify.annotations.Nullable;

/** How a stage ended, understood: passed when there is no failure. */
record StageEnd(
        String stage, @Nullable String failure, @Nullable String note) {}
