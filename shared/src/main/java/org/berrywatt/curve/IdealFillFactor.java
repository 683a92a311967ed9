package org.berrywatt.curve;

/**
 * Fill factor of an ideal diode without resistances, the most that a cell of its voltage can have.
 *
 * <p>With v = Voc/(n kT/q) and the voltage w of greatest power, in the same unit, w + ln(1 + w) = v and FF = w² / (v (1 + w)
 * (1 - exp(-v))): exact where the formula of Green (Solid-State Electronics 24, 1981, 788), FF0 = (v - ln(v + 0.72))/(v + 1),
 * holds to four digits for v above 10 only. It falls to 1/4, the straight line, as v goes to 0.
 */
public final class IdealFillFactor {
    private static final int ENOUGH_STEPS = 60;

    private IdealFillFactor() {}

    /** Fill factor, in (1/4, 1), at an open-circuit voltage over n kT/q in (0, ∞). */
    public static double at(double normalisedVoltage) {
        var best = bestVoltage(normalisedVoltage);
        return best * best / (normalisedVoltage * (1 + best) * -Math.expm1(-normalisedVoltage));
    }

    private static double bestVoltage(double normalisedVoltage) {
        var w = normalisedVoltage / 2;
        for (int step = 0; step < ENOUGH_STEPS; step++) {
            var next = w - (w + Math.log1p(w) - normalisedVoltage) * (1 + w) / (2 + w);
            if (next == w) {
                return w;
            }
            w = next;
        }
        return w;
    }
}
