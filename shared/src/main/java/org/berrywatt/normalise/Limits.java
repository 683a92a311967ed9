package org.berrywatt.normalise;

/** The doors of the pipeline: what is not within its limits, NaN included, is refused. */
final class Limits {
    private Limits() {}

    static void require(boolean within, String quantity, double value, String limit) {
        if (!within) {
            throw new NormalisationRefused(quantity, value, limit);
        }
    }
}
