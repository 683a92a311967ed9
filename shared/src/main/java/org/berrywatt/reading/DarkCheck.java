package org.berrywatt.reading;

import static org.berrywatt.reading.SolarClass.GALVANIC;
import static org.berrywatt.reading.SolarClass.MIXED;
import static org.berrywatt.reading.SolarClass.NO_RESPONSE;
import static org.berrywatt.reading.SolarClass.PHOTOVOLTAIC;
import static org.berrywatt.reading.SolarClass.REVERSED;

import java.util.List;

/**
 * Tells a solar cell from a battery by one reading in the dark and one under light.
 *
 * <p>Light's own part is the change from dark to light; subtracting is right for the current at short circuit. Voltages of
 * the two are compared but never subtracted from each other for a result: the device is not linear. Where a current was not
 * read in both, the voltage stands in for it.
 *
 * <p>Where the covered cell was read with the leads both ways, what kept its sign is the meter's zero and no battery's; see
 * {@link LeadSwap}.
 */
public final class DarkCheck {

    private DarkCheck() {}

    /**
     * Classifies a cell. The rules in their order: a voltage beyond the highest is a battery's; a cell that light does not
     * move has no response, or is a battery when it has a dark voltage; a large dark part, or a voltage that light lowers,
     * makes a battery; a smaller dark part, or a dark voltage, makes it mixed; else it is photovoltaic. A cell that counts
     * but for its sign is reversed.
     *
     * @param dark covered cell
     * @param light the same cell under light
     * @throws IllegalArgumentException when neither voltage nor current was read both in the dark and under light
     */
    public static Classification classify(Covered dark, Terminals light, DarkThresholds limits) {
        Terminals own = dark.own();
        DarkEvidence evidence = new DarkEvidence(
                LightChange.of(own.voltageV(), dark.shown().voltageV(), light.voltageV()),
                LightChange.of(own.currentA(), dark.shown().currentA(), light.currentA()),
                limits);
        if (!(evidence.largestVoltage().value() <= limits.highestVoltageV())) {
            return found(GALVANIC, evidence.largestVoltage());
        }
        if (!evidence.answersToLight()) {
            return unmoved(evidence);
        }
        return evidence.response().value() > 0 ? forward(evidence) : backward(evidence);
    }

    private static Classification unmoved(DarkEvidence evidence) {
        return evidence.darkIsReal() && evidence.darkVoltageStands()
                ? found(GALVANIC, evidence.darkVoltage(), evidence.response())
                : found(NO_RESPONSE, evidence.response());
    }

    private static Classification backward(DarkEvidence evidence) {
        Classification seenSo = forward(evidence.mirrored());
        return seenSo.solarClass().counts()
                ? found(
                        REVERSED,
                        evidence.response(),
                        evidence.darkShare(evidence.limits().smallDarkShare()))
                : seenSo;
    }

    private static Classification forward(DarkEvidence evidence) {
        Decider large = evidence.darkShare(evidence.limits().largeDarkShare());
        Decider small = evidence.darkShare(evidence.limits().smallDarkShare());
        Decider voltage = evidence.voltageResponse();
        if (large.value() >= large.limit()) {
            return found(GALVANIC, large);
        }
        if (voltage.value() <= voltage.limit()) {
            return found(GALVANIC, voltage);
        }
        boolean mixed = small.value() > small.limit() || evidence.darkVoltageStands();
        return found(mixed ? MIXED : PHOTOVOLTAIC, small, evidence.darkVoltage(), evidence.response());
    }

    private static Classification found(SolarClass solarClass, Decider... deciders) {
        return new Classification(solarClass, List.of(deciders));
    }
}
