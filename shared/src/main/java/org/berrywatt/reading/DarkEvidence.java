package org.berrywatt.reading;

import java.util.Optional;
import java.util.stream.Stream;

/** The numbers that a dark check rests on, each with the threshold it is held against. */
record DarkEvidence(Optional<LightChange> voltage, Optional<LightChange> current, DarkThresholds limits) {

    DarkEvidence mirrored() {
        return new DarkEvidence(voltage.map(LightChange::mirrored), current.map(LightChange::mirrored), limits);
    }

    /** The largest voltage of all, of either sign. */
    Decider largestVoltage() {
        double largestV = voltage.map(LightChange::largest).orElse(0.0);
        return new Decider("voltage", largestV, limits.highestVoltageV(), "V");
    }

    /** What light changes, in standard uncertainties. */
    Decider response() {
        return new Decider("response", leading().multiple(), limits.responseFactor(), "1");
    }

    /** What light changes of the voltage alone; below its limit light works against the cell. */
    Decider voltageResponse() {
        double multiple = voltage.map(LightChange::multiple).orElse(0.0);
        return new Decider("voltageResponse", multiple, -limits.responseFactor(), "1");
    }

    Decider darkShare(double limit) {
        return new Decider("darkShare", leading().darkShare(limits.responseFactor()), limit, "1");
    }

    Decider darkVoltage() {
        double darkV = voltage.map(it -> it.dark().value()).orElse(0.0);
        double limitV = voltage.map(this::darkVoltageLimitV).orElse(limits.darkVoltageV());
        return new Decider("darkVoltage", darkV, limitV, "V");
    }

    boolean answersToLight() {
        return moves(leading());
    }

    boolean darkIsReal() {
        return changes().anyMatch(it -> it.darkIsReal(limits.responseFactor()));
    }

    /** A dark voltage beyond the meter's uncertainty and beyond the nearer of its two limits. */
    boolean darkVoltageStands() {
        return voltage.filter(it -> it.darkIsReal(limits.responseFactor()))
                .filter(it -> Math.abs(it.dark().value()) > darkVoltageLimitV(it))
                .isPresent();
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

    private boolean moves(LightChange change) {
        return Math.abs(change.multiple()) >= limits.responseFactor();
    }

    private double darkVoltageLimitV(LightChange voltage) {
        double shareV = limits.darkVoltageShare() * Math.abs(voltage.light().value());
        return Math.min(limits.darkVoltageV(), shareV);
    }
}
