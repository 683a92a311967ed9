package org.berrywatt.light;

import org.berrywatt.uncertainty.Estimate;

/**
 * The light at a cell: what the instrument read, and the AM1.5 sunlight under which this dye would deliver the same current.
 *
 * <p>{@code effective = reading · calibration · mismatch}, with the mismatch M of IEC 60904-7. A reading in lux enters as the
 * sunlight that shows the same lux. Total irradiance, which is no fair yardstick between lamps, stands beside it.
 *
 * @param lamp the source of the light
 * @param readingWm2 AM1.5 sunlight at which the instrument shows the same, in W/m², uncertain by the reading alone
 * @param calibration factor 1 with the relative uncertainty of the instrument's calibration
 * @param mismatch spectral mismatch, in (0, ∞)
 * @param totalWm2 irradiance over the whole band of the lamp, in W/m²
 * @param effectiveWm2 effective irradiance for the dye, in W/m²
 * @param efficacyLmPerW luminous efficacy of the lamp's radiation, in lm/W, the same as lx per W/m²
 */
public record EffectiveIrradiance(
        LightSource lamp,
        Instrument instrument,
        DyeFamily dye,
        Estimate readingWm2,
        Estimate calibration,
        Estimate mismatch,
        Estimate totalWm2,
        Estimate effectiveWm2,
        Estimate efficacyLmPerW) {

    /**
     * The light behind an instrument's display.
     *
     * @param rawReading what the display shows, in lx or W/m², in (0, ∞), uncertain by resolution, drift and repeats
     * @param lux whether the display shows lx; then the instrument follows the eye, whatever its kind
     * @throws IllegalArgumentException when the reading is not in (0, ∞)
     */
    public static EffectiveIrradiance of(
            LightSource lamp, Instrument instrument, DyeFamily dye, Estimate rawReading, boolean lux) {
        if (!(rawReading.value() > 0)) {
            throw new IllegalArgumentException("a light reading lies in (0, infinity), not " + rawReading.value());
        }
        var reader = lux ? Instrument.LUX_METER : instrument;
        var reading = lux ? rawReading.times(1 / Sunlight.LUX_PER_WM2) : rawReading;
        return of(lamp, reader, dye, reading, new Estimate(1, reader.calibrationUncertainty()));
    }

    /**
     * The light behind the current of a silicon cell of known short-circuit current.
     *
     * @param currentA short-circuit current of the reference cell, value in (0, ∞)
     * @throws IllegalArgumentException when the current is not in (0, ∞)
     */
    public static EffectiveIrradiance of(LightSource lamp, ReferenceCell cell, DyeFamily dye, Estimate currentA) {
        return of(lamp, Instrument.REFERENCE_CELL, dye, cell.readingWm2(currentA), cell.calibration());
    }

    /** Illuminance of the lamp, in lx: what a lux meter reads, or what the lamp's efficacy makes of its total irradiance. */
    public Estimate illuminanceLx() {
        return instrument == Instrument.LUX_METER
                ? product(readingWm2.times(Sunlight.LUX_PER_WM2), calibration, Estimate.exact(1))
                : product(totalWm2, efficacyLmPerW, Estimate.exact(1));
    }

    /** The reading in lx that belongs to {@link #readingWm2}. */
    public double readingLx() {
        return readingWm2.value() * Sunlight.LUX_PER_WM2;
    }

    /** Illuminance of AM1.5 sunlight per irradiance, in lx per W/m². */
    public double sunlightLxPerWm2() {
        return Sunlight.LUX_PER_WM2;
    }

    private static EffectiveIrradiance of(
            LightSource lamp, Instrument instrument, DyeFamily dye, Estimate reading, Estimate calibration) {
        var table = LampTable.of(lamp);
        var mismatch = table.mismatch(instrument, dye);
        return new EffectiveIrradiance(
                lamp,
                instrument,
                dye,
                reading,
                calibration,
                mismatch,
                product(reading, calibration, table.total(instrument)),
                product(reading, calibration, mismatch),
                table.efficacyLmPerW());
    }

    /** Product of independent factors (JCGM 100:2008, 5.1.6). */
    private static Estimate product(Estimate a, Estimate b, Estimate c) {
        var value = a.value() * b.value() * c.value();
        var relative =
                Math.hypot(Math.hypot(a.relativeUncertainty(), b.relativeUncertainty()), c.relativeUncertainty());
        return new Estimate(value, value * relative);
    }
}
