package org.berrywatt.reading;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Tells a solar cell from a battery by one reading in the dark and one under light.
 *
 * <p>Light's own part is the change from dark to light; subtracting is right for the current at short circuit. Voltages of
 * the two are compared but never subtracted from each other for a result: the device is not linear. Where a current was not
 * read in both, the voltage stands in for it.
 */
public final class DarkCheck {

    private final Optional<LightChange> voltage;
    private final Optional<LightChange> current;
    private final DarkThresholds limits;

    private DarkCheck(Optional<LightChange> voltage, Optional<LightChange> current, DarkThresholds limits) {
        this.voltage = voltage;
        this.current = current;
        this.limits = limits;
    }

    /**
     * Classifies a cell.
     *
     * @param dark covered cell
     * @param light the same cell under light
     * @throws IllegalArgumentException when neither voltage nor current was read both in the dark and under light
     */
    public static Classification classify(Terminals dark, Terminals light, DarkThresholds limits) {
        DarkCheck check = new DarkCheck(
                LightChange.of(dark.voltageV(), light.voltageV()),
                LightChange.of(dark.currentA(), light.currentA()),
                limits);
        return check.classify();
    }

    private Classification classify() {
        Decider voltageReached = new Decider("voltage", largestVoltageV(), limits.highestVoltageV(), "V");
        if (!(largestVoltageV() <= limits.highestVoltageV())) {
            return new Classification(SolarClass.GALVANIC, List.of(voltageReached));
        }
        if (!answersToLight()) {
            return withoutAnswer();
        }
        return leading().multiple() > 0 ? forward() : backward();
    }

    /** Current where it was read, else voltage; the one that light moves when only one moves. */
    private LightChange leading() {
        return changes()
                .filter(this::moves)
                .findFirst()
                .or(() -> changes().findFirst())
                .orElseThrow(() -> new IllegalArgumentException(
                        "a dark check needs the voltage or the current both in the dark and under light"));
    }

    private Stream<LightChange> changes() {
        return Stream.concat(current.stream(), voltage.stream());
    }

    private boolean answersToLight() {
        return moves(leading());
    }

    private boolean moves(LightChange change) {
        return Math.abs(change.multiple()) >= limits.responseFactor();
    }

    private Classification withoutAnswer() {
        boolean battery = changes().anyMatch(it -> it.darkIsReal(limits.responseFactor())) && darkVoltageStands();
        return battery
                ? new Classification(SolarClass.GALVANIC, List.of(darkVoltage(), response()))
                : new Classification(SolarClass.NO_RESPONSE, List.of(response()));
    }

    private Classification backward() {
        DarkCheck swapped =
                new DarkCheck(voltage.map(LightChange::mirrored), current.map(LightChange::mirrored), limits);
        Classification seenSo = swapped.forward();
        return seenSo.solarClass().counts()
                ? new Classification(SolarClass.REVERSED, List.of(response(), darkShare()))
                : seenSo;
    }

    private Classification forward() {
        if (darkShare().value() >= limits.largeDarkShare()) {
            return new Classification(SolarClass.GALVANIC, List.of(largeDarkShare()));
        }
        if (voltageMultiple() <= -limits.responseFactor()) {
            return new Classification(SolarClass.GALVANIC, List.of(voltageResponse()));
        }
        boolean mixed = darkShare().value() > limits.smallDarkShare() || darkVoltageStands();
        return new Classification(
                mixed ? SolarClass.MIXED : SolarClass.PHOTOVOLTAIC, List.of(darkShare(), darkVoltage(), response()));
    }

    /** A dark voltage beyond the meter's uncertainty and beyond either limit. */
    private boolean darkVoltageStands() {
        return voltage.filter(it -> it.darkIsReal(limits.responseFactor()))
                .filter(it -> Math.abs(it.dark().value()) > darkVoltageLimitV(it))
                .isPresent();
    }

    private double darkVoltageLimitV(LightChange voltage) {
        double shareV = limits.darkVoltageShare() * Math.abs(voltage.light().value());
        return Math.min(limits.darkVoltageV(), shareV);
    }

    private double largestVoltageV() {
        return voltage.map(LightChange::largest).orElse(0.0);
    }

    private double voltageMultiple() {
        return voltage.map(LightChange::multiple).orElse(0.0);
    }

    private Decider response() {
        return new Decider("response", leading().multiple(), limits.responseFactor(), "1");
    }

    private Decider voltageResponse() {
        return new Decider("voltageResponse", voltageMultiple(), -limits.responseFactor(), "1");
    }

    private Decider darkShare() {
        return new Decider("darkShare", share(), limits.smallDarkShare(), "1");
    }

    private Decider largeDarkShare() {
        return new Decider("darkShare", share(), limits.largeDarkShare(), "1");
    }

    private double share() {
        return leading().darkShare(limits.responseFactor());
    }

    private Decider darkVoltage() {
        double darkV = voltage.map(it -> it.dark().value()).orElse(0.0);
        return new Decider(
                "darkVoltage", darkV, voltage.map(this::darkVoltageLimitV).orElse(limits.darkVoltageV()), "V");
    }
}
