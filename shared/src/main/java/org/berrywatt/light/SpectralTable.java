package org.berrywatt.light;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** A table of spectra among the resources: comment lines, a line of names, then wavelength in nm and values. */
record SpectralTable(List<String> names, List<String[]> rows) {

    static SpectralTable read(String resource) {
        var stream = Objects.requireNonNull(SpectralTable.class.getResourceAsStream(resource), resource);
        try (var reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            var rows = reader.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(",", -1))
                    .toList();
            return new SpectralTable(Arrays.asList(rows.get(0)), rows.subList(1, rows.size()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The named column over the band in which it is tabulated. */
    Spectrum column(String name) {
        var column = names.indexOf(name);
        var filled = rows.stream().filter(row -> !row[column].isEmpty()).toList();
        return new Spectrum(numbers(filled, 0), numbers(filled, column));
    }

    private static double[] numbers(List<String[]> rows, int column) {
        return rows.stream().mapToDouble(row -> Double.parseDouble(row[column])).toArray();
    }
}
