package org.berrywatt.validation;

import java.util.List;
import java.util.stream.Stream;
import org.berrywatt.curve.CurveRows;
import org.berrywatt.light.LightRows;
import org.berrywatt.uncertainty.UncertaintyRows;

/** Agreement with published values. */
final class Accuracy {
    private Accuracy() {}

    static List<Row> rows() {
        return Stream.of(LightRows.all(), CurveRows.all(), UncertaintyRows.all())
                .flatMap(List::stream)
                .toList();
    }
}
