package org.berrywatt.server.leaderboard;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.berrywatt.contract.Remark;
import org.berrywatt.leaderboard.Obstacle;
import org.berrywatt.light.Linearity;
import org.berrywatt.reading.Classification;
import org.berrywatt.reading.Covered;
import org.berrywatt.reading.Decider;
import org.berrywatt.reading.LeadSwap;
import org.berrywatt.reading.Retention;
import org.berrywatt.reading.Settling;
import org.berrywatt.reading.SolarClass;
import org.berrywatt.server.cell.StageOutcome;
import org.berrywatt.server.light.Station;
import org.jspecify.annotations.Nullable;

/** Why a cell stands where it stands and what to do about it; texts {@code standing.*} of the catalogue. */
final class Remarks {

    static final Remark BUILDING = Remark.of("standing.building");
    static final Remark NO_AREA = Remark.of("standing.noArea");
    static final Remark NO_DARK_CHECK = Remark.of("standing.noDarkCheck");
    static final Remark NO_LIGHT_READING = Remark.of("standing.noLightReading");
    static final Remark SWEEP_UNUSABLE = Remark.of("standing.sweepUnusable");
    static final Remark OUT_OF_RANGE = Remark.of("standing.outOfRange");
    static final Remark SWEEP_STANDS = Remark.of("standing.sweepStands");
    static final Remark TOGGLES_HELD = Remark.of("standing.togglesHeld");

    private static final Remark OXIDE_ONLY = Remark.of("standing.oxideOnly");

    private Remarks() {}

    static Remark failed(StageOutcome outcome) {
        return new Remark(
                "standing.failed",
                Map.of(
                        "stage", "catalogue.stage." + outcome.stage(),
                        "failure", "catalogue.failure." + outcome.failure()));
    }

    static Remark stationDark(Station station) {
        return new Remark("standing.stationDark", Map.of("station", station.name()));
    }

    /** Why a cell that does not count as a solar cell yet does not, or what to know about one that half does. */
    static Remark classified(Classification classification) {
        if (classification.solarClass() == SolarClass.OXIDE_ONLY) {
            return OXIDE_ONLY;
        }
        Decider decider = weightiest(classification.deciders());
        return new Remark(
                "standing." + classification.solarClass().key() + "." + decider.key(),
                Map.of("value", shown(decider.value(), decider), "limit", shown(decider.limit(), decider)));
    }

    /**
     * Why the day's rule does not take a cell with a result.
     *
     * @param station at which it was read, or where it is wanted
     * @param control label of the control cell
     */
    static Remark obstacle(Obstacle obstacle, String station, String control) {
        String key = "standing." + obstacle.key();
        return switch (obstacle) {
            case OTHER_STATION -> new Remark(key, Map.of("station", station));
            case CONTROL_NOT_READ -> new Remark(key, Map.of("station", station, "control", control));
            case CONTROL_TOO_FAINT -> new Remark(key, Map.of("control", control));
            default -> Remark.of(key);
        };
    }

    /** What swapped leads told of the meter, once a display shows it. */
    static Stream<Remark> meterZero(Covered dark) {
        return Stream.of(zero("voltage", dark.voltage(), 1e3), zero("current", dark.current(), 1e6))
                .flatMap(Optional::stream);
    }

    private static Optional<Remark> zero(String quantity, @Nullable LeadSwap swap, double shownPerSi) {
        return Optional.ofNullable(swap)
                .filter(it -> it.consistent() && Math.abs(it.zero()) >= it.resolution())
                .map(it -> new Remark(
                        "standing.meterZero." + quantity,
                        Map.of("value", Math.rint(it.zero() * shownPerSi * 1000) / 1000)));
    }

    /** What a settled cell kept, and its time to 80 % as far as it was seen. */
    static Remark kept(Retention retention) {
        Retention.Aged latest = retention.parts().get(retention.parts().size() - 1);
        double percent = Math.rint(100 * latest.value().value());
        if (retention.lifetime() instanceof Retention.Lifetime.Between between) {
            return new Remark(
                    "standing.kept.fell",
                    Map.of(
                            "percent", percent,
                            "hours", hours(latest.age()),
                            "above", hours(between.lastAbove()),
                            "below", hours(between.firstBelow())));
        }
        return new Remark("standing.kept.lasts", Map.of("percent", percent, "hours", hours(latest.age())));
    }

    /** Whole hours; tenths below ten. */
    private static double hours(Duration age) {
        double hours = age.toMinutes() / 60.0;
        return hours < 10 ? Math.rint(10 * hours) / 10 : Math.rint(hours);
    }

    /** A refill is no secret: the result says how often. */
    static Optional<Remark> refilled(List<Instant> refills) {
        return refills.isEmpty()
                ? Optional.empty()
                : Optional.of(new Remark("standing.refilled", Map.of("times", refills.size())));
    }

    /** A cell that still changes: by how much, and when to read it again, in minutes after its latest reading. */
    static Optional<Remark> settling(Settling settling, Instant latest) {
        return Optional.ofNullable(settling.comeBackAt())
                .filter(at -> settling.state() == Settling.State.SETTLING)
                .map(at -> new Remark(
                        "standing.settling",
                        Map.of(
                                "percent", Math.rint(100 * settling.remaining()),
                                "minutes",
                                        Math.ceil(Duration.between(latest, at).toSeconds() / 60.0))));
    }

    /** Whether current follows light, once the readings tell. */
    static Optional<Remark> linearity(Linearity linearity) {
        return linearity.verdict() == Linearity.Verdict.OPEN
                ? Optional.empty()
                : Optional.of(new Remark(
                        "standing.linearity." + linearity.verdict().key(),
                        Map.of(
                                "percent",
                                Math.rint(100 * (Math.pow(2, linearity.slope().value()) - 1)))));
    }

    /** The first number beyond its limit. */
    private static Decider weightiest(List<Decider> deciders) {
        return deciders.stream()
                .filter(decider -> Math.abs(decider.value()) > decider.limit())
                .findFirst()
                .orElse(deciders.get(0));
    }

    /** Volts are shown in mV, shares in per cent, multiples as they are; whole numbers will do. */
    private static double shown(double value, Decider decider) {
        return Math.rint(value * scale(decider));
    }

    private static double scale(Decider decider) {
        return switch (decider.key()) {
            case "darkShare", "toggleScatter" -> 100;
            case "voltage", "darkVoltage" -> 1000;
            default -> 1;
        };
    }
}
