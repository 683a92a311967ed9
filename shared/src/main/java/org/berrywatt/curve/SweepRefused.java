package org.berrywatt.curve;

/** A load sweep from which no figures can be had; the message names what, the value and the limit. */
public final class SweepRefused extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final SweepFault fault;

    SweepRefused(SweepFault fault, String message) {
        super(message);
        this.fault = fault;
    }

    public SweepFault fault() {
        return fault;
    }
}
