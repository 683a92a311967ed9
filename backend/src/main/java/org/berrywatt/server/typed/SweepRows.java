package org.berrywatt.server.typed;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.curve.Sweep;
import org.berrywatt.curve.SweepFault;
import org.berrywatt.curve.SweepPoint;
import org.berrywatt.curve.SweepRefused;
import org.berrywatt.server.platform.Refusal;

/** The door for load sweeps as a whole: what passes has a curve. */
public final class SweepRows {

    private static final double MILLI = 1e3;
    private static final double MICRO = 1e6;
    private static final MathContext SHOWN = new MathContext(4);

    private SweepRows() {}

    /**
     * The curve of a request's rows.
     *
     * @param points of the rows at the path {@code points}, in their order
     * @throws Refusal {@code sweep.notFinite}, {@code sweep.tooFewLoads}, {@code sweep.noSpread}, {@code
     *     sweep.wrongQuadrant}, {@code sweep.notFalling}; names the row to look at first, where one stands out
     */
    public static Sweep sweep(List<SweepPoint> points) {
        try {
            return Sweep.of(points);
        } catch (SweepRefused refused) {
            throw refusal(refused, points);
        }
    }

    private static Refusal refusal(SweepRefused refused, List<SweepPoint> points) {
        var suspect = refused.suspect();
        var refusal = Refusal.of(code(refused.fault())).value(refused.value()).limit(refused.limit());
        return suspect == null
                ? refusal.field("points")
                : refusal.field("points[" + suspect + "]").with("likely", words(suspect, points.get(suspect)));
    }

    private static String words(int row, SweepPoint point) {
        return (row + 1) + " (" + shown(MILLI * point.voltageV()) + " mV, " + shown(MICRO * point.currentA()) + " µA)";
    }

    private static String shown(double value) {
        return Double.isFinite(value)
                ? new BigDecimal(value).round(SHOWN).stripTrailingZeros().toPlainString()
                : String.valueOf(value);
    }

    private static ProblemCode code(SweepFault fault) {
        return switch (fault) {
            case NOT_FINITE -> ProblemCode.SWEEP_NOT_FINITE;
            case TOO_FEW_POINTS -> ProblemCode.SWEEP_TOO_FEW_LOADS;
            case NO_SPREAD -> ProblemCode.SWEEP_NO_SPREAD;
            case WRONG_QUADRANT -> ProblemCode.SWEEP_WRONG_QUADRANT;
            case NOT_FALLING -> ProblemCode.SWEEP_NOT_FALLING;
        };
    }
}
