package org.berrywatt.server.calculator;

import java.util.List;
import java.util.stream.Stream;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.Remark;
import org.berrywatt.contract.calculation.LightRequest;
import org.berrywatt.light.Incidence;
import org.berrywatt.light.SmallLamp;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

/** Where the cell lies and how it is turned, against where and how the light was read. */
record LightGeometry(@Nullable Double distanceM, double readAtM, SmallLamp lamp, Incidence incidence) {

    private static final double READ_AT_M = 1;
    private static final double DIAMETER_M = 0.05;

    static LightGeometry of(LightRequest request) {
        return new LightGeometry(
                Ranges.DISTANCE_M.maybe("distanceM", request.distanceM()),
                Ranges.DISTANCE_M.or(READ_AT_M, "readAtM", request.readAtM()),
                new SmallLamp(Ranges.DIAMETER_M.or(DIAMETER_M, "lampDiameterM", request.lampDiameterM())),
                new Incidence(Ranges.ANGLE_DEG.or(0, "angleDeg", request.angleDeg()), 0));
    }

    /** The reading carried to the cell. */
    Estimate atCell(Estimate reading) {
        return incidence.on(distanceM == null ? reading : carried(reading, distanceM));
    }

    List<Remark> notes() {
        return Stream.of(Remark.of("note.lightAskew"))
                .filter(note -> incidence.flagged())
                .toList();
    }

    private Estimate carried(Estimate reading, double toM) {
        requireFar("readAtM", readAtM);
        requireFar("distanceM", toM);
        return lamp.at(reading, Estimate.exact(readAtM), Estimate.exact(toM));
    }

    private void requireFar(String field, double distance) {
        if (!(distance >= lamp.nearestM())) {
            throw Refusal.of(ProblemCode.CALCULATION_TOO_NEAR)
                    .field(field)
                    .value(distance)
                    .limit("[" + lamp.nearestM() + ", ∞) m");
        }
    }
}
