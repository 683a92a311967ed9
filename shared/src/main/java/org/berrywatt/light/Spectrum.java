package org.berrywatt.light;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A quantity over wavelength, piecewise linear between its lines and 0 outside them.
 *
 * <p>For light the values are power per wavelength, in W m⁻² nm⁻¹ or relative; integrals are trapezoids over the lines.
 */
final class Spectrum {
    private final double[] wavelengthsNm;
    private final double[] values;

    /** Lines in rising order of wavelength. */
    Spectrum(double[] wavelengthsNm, double[] values) {
        this.wavelengthsNm = wavelengthsNm;
        this.values = values;
    }

    /** A function sampled every nanometre over a closed band. */
    static Spectrum sampled(int fromNm, int toNm, DoubleUnaryOperator function) {
        var wavelengths = IntStream.rangeClosed(fromNm, toNm).asDoubleStream().toArray();
        return new Spectrum(
                wavelengths, DoubleStream.of(wavelengths).map(function).toArray());
    }

    /** The same spectrum with lines at most a nanometre apart, for tables coarser than the responses they meet. */
    Spectrum finer() {
        var lines = IntStream.range(0, wavelengthsNm.length)
                .mapToObj(this::upTo)
                .flatMapToDouble(DoubleStream::of)
                .toArray();
        return new Spectrum(lines, DoubleStream.of(lines).map(this::at).toArray());
    }

    /** A line, after as many between it and the one before as it takes. */
    private double[] upTo(int line) {
        var left = line == 0 ? wavelengthsNm[0] : wavelengthsNm[line - 1];
        var gap = wavelengthsNm[line] - left;
        var parts = Math.max(1, (int) Math.ceil(gap));
        return IntStream.rangeClosed(1, parts)
                .mapToDouble(part -> part == parts ? wavelengthsNm[line] : left + gap * part / parts)
                .toArray();
    }

    /** This spectrum up to its end, then the other one, scaled to meet it there, up to a wavelength. */
    Spectrum continuedBy(Spectrum other, int toNm) {
        var meeting = at(toNm()) / other.at(toNm());
        return sampled((int) fromNm(), toNm, nm -> nm <= toNm() ? at(nm) : meeting * other.at(nm));
    }

    /** The wavelengths of both ends and, between them, of the highest line in each of some equal stretches. */
    List<Double> highest(int most) {
        var inner = values.length - 2;
        var stretches = Math.min(most - 2, inner);
        var peaks = IntStream.range(0, stretches)
                .map(i -> highest(1 + i * inner / stretches, 1 + (i + 1) * inner / stretches));
        return Stream.of(IntStream.of(0), peaks, IntStream.of(values.length - 1))
                .flatMap(IntStream::boxed)
                .map(i -> wavelengthsNm[i])
                .toList();
    }

    private int highest(int from, int to) {
        return IntStream.range(from, to)
                .reduce((a, b) -> values[b] > values[a] ? b : a)
                .orElseThrow();
    }

    double largest() {
        return DoubleStream.of(values).max().orElseThrow();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Spectrum spectrum
                && Arrays.equals(wavelengthsNm, spectrum.wavelengthsNm)
                && Arrays.equals(values, spectrum.values);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(wavelengthsNm) + Arrays.hashCode(values);
    }

    double fromNm() {
        return wavelengthsNm[0];
    }

    double toNm() {
        return wavelengthsNm[wavelengthsNm.length - 1];
    }

    double at(double nm) {
        var found = Arrays.binarySearch(wavelengthsNm, nm);
        if (found >= 0) {
            return values[found];
        }
        var next = -found - 1;
        return next == 0 || next == values.length ? 0 : between(next - 1, nm);
    }

    private double between(int left, double nm) {
        var part = (nm - wavelengthsNm[left]) / (wavelengthsNm[left + 1] - wavelengthsNm[left]);
        return values[left] + part * (values[left + 1] - values[left]);
    }

    /** Integral over all lines, in the unit of the values times nm. */
    double integral() {
        return weighted(nm -> 1);
    }

    /** Integral of this spectrum times a response. */
    double weighted(DoubleUnaryOperator response) {
        var sum = 0.0;
        var left = values[0] * response.applyAsDouble(wavelengthsNm[0]);
        for (int i = 1; i < values.length; i++) {
            var right = values[i] * response.applyAsDouble(wavelengthsNm[i]);
            sum += (wavelengthsNm[i] - wavelengthsNm[i - 1]) * (left + right) / 2;
            left = right;
        }
        return sum;
    }
}
