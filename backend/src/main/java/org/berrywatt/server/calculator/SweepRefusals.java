package org.berrywatt.server.calculator;

import org.berrywatt.contract.ProblemCode;
import org.berrywatt.curve.SweepFault;
import org.berrywatt.curve.SweepRefused;
import org.berrywatt.server.platform.Refusal;

/** A sweep without figures as a problem. */
final class SweepRefusals {

    private SweepRefusals() {}

    static Refusal of(SweepRefused refused) {
        return Refusal.of(code(refused.fault())).field("points");
    }

    private static ProblemCode code(SweepFault fault) {
        return switch (fault) {
            case NOT_FINITE -> ProblemCode.CALCULATION_NO_RESULT;
            case TOO_FEW_POINTS -> ProblemCode.SWEEP_TOO_FEW_LOADS;
            case NO_SPREAD -> ProblemCode.SWEEP_NO_SPREAD;
            case WRONG_QUADRANT -> ProblemCode.SWEEP_WRONG_QUADRANT;
            case NOT_FALLING -> ProblemCode.SWEEP_NOT_FALLING;
        };
    }
}
