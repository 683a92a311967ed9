package org.berrywatt.curve;

import org.jspecify.annotations.Nullable;

/** A load sweep from which no figures can be had; the message names what, the value, the limit and the way out. */
public final class SweepRefused extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final SweepFault fault;
    private final String value;
    private final String limit;
    private final @Nullable Integer suspect;

    SweepRefused(SweepFault fault, String value, String limit, @Nullable Integer suspect, String message) {
        super(message);
        this.fault = fault;
        this.value = value;
        this.limit = limit;
        this.suspect = suspect;
    }

    public SweepFault fault() {
        return fault;
    }

    /** What was found, with its unit. */
    public String value() {
        return value;
    }

    /** What is accepted, in interval notation. */
    public String limit() {
        return limit;
    }

    /** The point to look at first, from 0 in the order given; null where no one point stands out. */
    public @Nullable Integer suspect() {
        return suspect;
    }
}
