package org.berrywatt.leaderboard;

import java.util.List;
import org.berrywatt.normalise.Measurand;
import org.berrywatt.uncertainty.Deviates;

/**
 * Maximum power over total irradiance and area under the light of the reading, P/(G · A), as a part of 1, in [0, ∞): nothing is
 * brought to other light.
 *
 * <p>A dyed cell uses one lamp's light ten times better than another's, so that only cells of one station compare: eligible is a
 * cell whose counting reading was taken at the station at which most cells of the day were read. One read elsewhere is
 * outstanding, neither 0 nor counted while entry is open, and 0 at its end; the remedy is to read it there as well. A failed
 * cell gives 0.
 */
public record EfficiencyAsMeasured() implements Metric {

    @Override
    public String key() {
        return "efficiencyAsMeasured";
    }

    @Override
    public String unit() {
        return "part";
    }

    @Override
    public List<Count> counts() {
        return List.of(Count.MEDIAN, Count.BEST_VERIFIED, Count.MEAN);
    }

    @Override
    public Score score(MeasuredCell cell, Deviates deviates) {
        return isComparable(cell.station(), cell.mainStation())
                ? cell.now().figure(Measurand.EFFICIENCY, deviates)
                : new Score.Missing(Obstacle.OTHER_STATION);
    }

    /**
     * Whether an efficiency compares with the day's others.
     *
     * @param mainStation the station at which most cells were read
     */
    public static boolean isComparable(String station, String mainStation) {
        return station.equals(mainStation);
    }
}
