package org.berrywatt.leaderboard;

import java.util.List;
import org.berrywatt.normalise.Measurand;
import org.berrywatt.uncertainty.Deviates;

/**
 * Open-circuit voltage at the reference light, in V, in [0, ∞): between the logarithmic law of an ideal diode (IEC 60891,
 * procedure 2) and the straight one of a leaky cell, or as the diode fitted to a load sweep says.
 *
 * <p>Every cell with a result is eligible. The area plays no part, so that a small cell may win. A failed cell gives 0.
 */
public record OpenCircuitVoltage() implements Metric {

    @Override
    public String key() {
        return "voltage";
    }

    @Override
    public String unit() {
        return "V";
    }

    @Override
    public List<Count> counts() {
        return List.of(Count.MEDIAN, Count.BEST_VERIFIED, Count.MEAN);
    }

    @Override
    public Score score(MeasuredCell cell, Deviates deviates) {
        return cell.now().figure(Measurand.VOLTAGE, deviates);
    }
}
