package org.berrywatt.plan;

/** A plan that cannot be made; the message names what, the value, the limit and the way out. */
public final class PlanRefused extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final PlanFault fault;
    private final String subject;
    private final int value;
    private final int limit;

    PlanRefused(PlanFault fault, String subject, int value, int limit, String message) {
        super(message);
        this.fault = fault;
        this.subject = subject;
        this.value = value;
        this.limit = limit;
    }

    public PlanFault fault() {
        return fault;
    }

    /** Key of the factor it is about, or of a level after a colon; empty where it is about the whole. */
    public String subject() {
        return subject;
    }

    /** How many there are. */
    public int value() {
        return value;
    }

    /** How many there may be at most, or must be at least. */
    public int limit() {
        return limit;
    }
}
