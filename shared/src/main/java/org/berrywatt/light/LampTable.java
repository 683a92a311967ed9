package org.berrywatt.light;

import static java.util.function.Function.identity;
import static java.util.stream.Collectors.toUnmodifiableMap;

import java.util.Map;
import java.util.Objects;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.berrywatt.uncertainty.Estimate;

/**
 * Efficacy and mismatches of a source; those of the kinds of lamp are worked out once.
 *
 * <p>A mismatch takes as rectangular how far it moves over the other spectra of the kind and over the alternative bands of the
 * dye.
 *
 * @param totals total irradiance per irradiance that the instrument reads
 */
record LampTable(
        Estimate efficacyLmPerW,
        Map<Instrument, Estimate> totals,
        Map<Instrument, Map<DyeFamily, Estimate>> mismatches) {
    private static final Map<Lamp, LampTable> TABLES =
            Stream.of(Lamp.values()).collect(toUnmodifiableMap(identity(), LampTable::workedOut));

    static LampTable of(LightSource source) {
        if (source instanceof Lamp lamp) {
            return Objects.requireNonNull(TABLES.get(lamp));
        }
        return source instanceof OwnSpectrum own ? own.table() : workedOut(source);
    }

    Estimate total(Instrument instrument) {
        return Objects.requireNonNull(totals.get(instrument));
    }

    Estimate mismatch(Instrument instrument, DyeFamily dye) {
        return Objects.requireNonNull(
                Objects.requireNonNull(mismatches.get(instrument)).get(dye));
    }

    static LampTable workedOut(LightSource source) {
        var spectra = LampSpectra.of(source);
        var efficacy = Efficacy.lumensPerWatt(spectra.typical());
        return new LampTable(
                new Estimate(efficacy, efficacy * spectra.conversionUncertainty()),
                Stream.of(Instrument.values())
                        .collect(toUnmodifiableMap(identity(), instrument -> total(spectra, instrument))),
                Stream.of(Instrument.values())
                        .collect(toUnmodifiableMap(identity(), instrument -> mismatches(spectra, instrument))));
    }

    private static Estimate total(LampSpectra spectra, Instrument instrument) {
        var factor = Mismatch.of(spectra.typical(), Responses.of(instrument), Responses.FLAT);
        return new Estimate(
                factor, instrument == Instrument.SOLAR_METER ? 0 : factor * spectra.conversionUncertainty());
    }

    private static Map<DyeFamily, Estimate> mismatches(LampSpectra spectra, Instrument instrument) {
        return Stream.of(DyeFamily.values())
                .collect(toUnmodifiableMap(identity(), dye -> mismatch(spectra, instrument, dye)));
    }

    private static Estimate mismatch(LampSpectra spectra, Instrument instrument, DyeFamily dye) {
        var reader = Responses.of(instrument);
        var response = DyeResponse.of(dye);
        var typical = Mismatch.of(spectra.typical(), reader, response);
        var lamps = spectra.others().stream().mapToDouble(other -> Mismatch.of(other, reader, response));
        var bands = response.alternatives().stream().mapToDouble(band -> Mismatch.of(spectra.typical(), reader, band));
        return new Estimate(typical, Math.hypot(reach(typical, lamps), reach(typical, bands)) / Math.sqrt(3));
    }

    private static double reach(double typical, DoubleStream others) {
        return others.map(other -> Math.abs(other - typical)).max().orElse(0);
    }
}
