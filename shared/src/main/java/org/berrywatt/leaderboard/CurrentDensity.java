package org.berrywatt.leaderboard;

import java.util.List;
import org.berrywatt.normalise.Measurand;
import org.berrywatt.uncertainty.Deviates;

/**
 * Photocurrent per area at short circuit and the reference light, J = (Isc - Idark)/A · Gref/Geff, in A/m², in [0, ∞).
 *
 * <p>Every cell with a result is eligible, and needs no load sweep: this is the figure that a pair of readings knows best. It
 * does not tell what of the current survives under load. A failed cell gives 0.
 */
public record CurrentDensity() implements Metric {

    @Override
    public String key() {
        return "currentDensity";
    }

    @Override
    public String unit() {
        return "Am2";
    }

    @Override
    public List<Count> counts() {
        return List.of(Count.MEDIAN, Count.BEST_VERIFIED, Count.MEAN);
    }

    @Override
    public Score score(MeasuredCell cell, Deviates deviates) {
        return cell.now().figure(Measurand.CURRENT_DENSITY, deviates);
    }
}
