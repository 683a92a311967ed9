package org.berrywatt.calibration;

import java.util.stream.Stream;

/** How many of how many. */
record Share(long some, long of) {

    static Share of(Stream<Boolean> cases) {
        return cases.map(held -> new Share(held ? 1 : 0, 1))
                .reduce(new Share(0, 0), (a, b) -> new Share(a.some + b.some, a.of + b.of));
    }

    /** In [0, 1]; NaN of none. */
    double part() {
        return (double) some / of;
    }
}
