package org.berrywatt.leaderboard;

import java.util.List;
import org.berrywatt.uncertainty.Deviates;

/**
 * Maximum power per area at the reference light, P/A = FF · Voc · J, in W/m², in [0, ∞). The default.
 *
 * <p>Every cell with a result is eligible, wherever it was read: results are brought to one effective irradiance. Without a
 * load sweep the fill factor is known by its limits alone and the interval is wide; a sweep narrows it. A failed cell gives 0.
 */
public record PowerDensity() implements Metric {

    @Override
    public String key() {
        return "powerDensity";
    }

    @Override
    public String unit() {
        return "Wm2";
    }

    @Override
    public List<Count> counts() {
        return List.of(Count.MEDIAN, Count.BEST_VERIFIED, Count.MEAN);
    }

    @Override
    public Score score(MeasuredCell cell, Deviates deviates) {
        return cell.now().powerDensity();
    }
}
