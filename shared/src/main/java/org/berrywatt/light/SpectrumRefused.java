package org.berrywatt.light;

/** A table that is not a spectrum; the message names row, value and limit. */
public final class SpectrumRefused extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final SpectrumFault fault;
    private final int row;
    private final String value;
    private final String limit;

    SpectrumRefused(SpectrumFault fault, int row, String value, String limit) {
        super((row > 0 ? "row " + row : "the spectrum") + ": " + value + " is not allowed, " + fault.key() + " needs "
                + limit);
        this.fault = fault;
        this.row = row;
        this.value = value;
        this.limit = limit;
    }

    public SpectrumFault fault() {
        return fault;
    }

    /** Line of the text, the first is 1; 0 when the table as a whole is refused. */
    public int row() {
        return row;
    }

    /** What stood there. */
    public String value() {
        return value;
    }

    /** What would have been allowed, ranges in interval notation. */
    public String limit() {
        return limit;
    }
}
