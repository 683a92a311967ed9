package org.berrywatt.curve;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.berrywatt.curve.ReferenceCurves.Curve;
import org.berrywatt.validation.Row;

/** What the diode reproduces. */
public final class CurveRows {
    private static final String EXACT = "18 curves of 50-digit arithmetic";

    private CurveRows() {}

    public static List<Row> all() {
        return Stream.concat(diode(), CertifiedFit.all().map(CurveRows::certified))
                .toList();
    }

    private static Stream<Row> diode() {
        return Stream.of(
                worst(
                        "current at every voltage, against a hundredth of the photocurrent at least",
                        CurveRows::currents),
                worst("short-circuit current", CurveRows::shortCircuit),
                worst("open-circuit voltage", CurveRows::openCircuit),
                worst("greatest power", CurveRows::power),
                fit(FitCriterion.INSERTED, "9.8602"),
                fit(FitCriterion.SOLVED, "7.7301"));
    }

    private static Row certified(CertifiedFit fit) {
        var digits = Math.min(fit.digitsOfEstimates(), fit.digitsOfStandardErrors());
        return Row.atLeast(
                "parameters and their standard errors, worst",
                "NIST/ITL StRD, nonlinear " + fit,
                fit.wanted(),
                digits,
                "digits");
    }

    private static Row worst(String what, ToDoubleFunction<Curve> error) {
        var worst = Stream.concat(ReferenceCurves.silicon(), ReferenceCurves.dyeCells())
                .mapToDouble(error)
                .max()
                .orElse(Double.NaN);
        return Row.atMost(what + ", worst", EXACT, 1e-12, worst, "relative");
    }

    private static Row fit(FitCriterion criterion, String published) {
        var rmseA = DiodeFit.of(MeasuredCurves.rtcFrance(), 33, criterion).rmseA();
        var what =
                "root mean square error of the fit, current " + criterion.name().toLowerCase(Locale.ROOT);
        return Row.printed(what, "RTC France cell, Easwarakhanthan et al. 1986", published, 1e4 * rmseA, "· 10⁻⁴ A");
    }

    private static double currents(Curve curve) {
        return curve.points().stream()
                .mapToDouble(point -> error(
                        curve.diode().currentA(point[0]),
                        point[1],
                        Math.max(Math.abs(point[1]), 0.01 * curve.diode().photocurrentA())))
                .max()
                .orElse(Double.NaN);
    }

    private static double shortCircuit(Curve curve) {
        var exact = value(curve, "i_sc", "i_sc_A");
        return error(curve.diode().shortCircuitCurrentA(), exact, exact);
    }

    private static double openCircuit(Curve curve) {
        var exact = value(curve, "v_oc", "v_oc_V");
        return error(curve.diode().openCircuitVoltageV(), exact, exact);
    }

    private static double power(Curve curve) {
        var exact = value(curve, "p_mp", "p_mp_W");
        return error(curve.diode().maximumPower().powerW(), exact, exact);
    }

    private static double value(Curve curve, String silicon, String dyeCell) {
        return curve.value(curve.values().has(silicon) ? silicon : dyeCell);
    }

    private static double error(double found, double exact, double scale) {
        return Math.abs(found - exact) / scale;
    }
}
