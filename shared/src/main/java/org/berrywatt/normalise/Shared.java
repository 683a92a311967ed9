package org.berrywatt.normalise;

import java.util.List;
import org.berrywatt.uncertainty.Budget;

/** Picks from a budget what other cells share: station readings, the instrument's calibration, the lamp's mismatch. */
final class Shared {
    private Shared() {}

    static List<SharedUncertainty> of(LightAtCell light, Budget power) {
        var causes = LightCauses.of(light);
        return List.of(
                new SharedUncertainty(causes.reading(), change(power, LightTerms.READING)),
                new SharedUncertainty(causes.calibration(), change(power, LightTerms.CALIBRATION)),
                new SharedUncertainty(causes.mismatch(), change(power, LightTerms.MISMATCH)));
    }

    private static double change(Budget budget, String input) {
        return budget.contributions().stream()
                .filter(contribution -> contribution.input().name().equals(input))
                .mapToDouble(contribution ->
                        contribution.sensitivity() * contribution.input().standardUncertainty())
                .sum();
    }
}
