package org.berrywatt.normalise;

/**
 * How far the short-circuit current stays behind the light where a series resistance limits it: between proportional to the light
 * and constant from where the resistance takes all of the voltage.
 */
final class SeriesLaw {
    private SeriesLaw() {}

    /**
     * Short-circuit current over one that is proportional to the light.
     *
     * @param share of its voltage that a cell loses at short circuit at most, in [0, 1]
     * @param ratio of lights
     * @param law 1 where the current is proportional, -1 where it falls behind most
     */
    static Term currentFactor(double share, Ratio ratio, Term law) {
        var logShare = Math.log(share);
        return values -> {
            var behind = Math.max(0, logShare + ratio.logarithm().in(values));
            return Math.exp(-behind * (1 - law.in(values)) / 2);
        };
    }
}
