package org.berrywatt.curve;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Tables among the test resources; each file names its source and how it was checked. */
final class MeasuredCurves {
    private static final CSVFormat FORMAT = CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setCommentMarker('#')
            .get();

    private MeasuredCurves() {}

    /** The 26 points of T. Easwarakhanthan et al., International Journal of Solar Energy 4 (1986) 1-12, at 33 °C. */
    static List<SweepPoint> rtcFrance() {
        return rows("/curve/rtc_france_57mm.csv").stream()
                .map(row -> SweepPoint.exact(number(row, "voltage_V"), number(row, "current_A")))
                .toList();
    }

    static List<CSVRecord> rows(String file) {
        try (var table =
                new InputStreamReader(MeasuredCurves.class.getResourceAsStream(file), StandardCharsets.UTF_8)) {
            return FORMAT.parse(table).getRecords();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
