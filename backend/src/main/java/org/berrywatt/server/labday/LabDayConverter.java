package org.berrywatt.server.labday;

import org.berrywatt.contract.LabDayAnswer;
import org.berrywatt.contract.LabDayRequest;
import org.berrywatt.reading.Fields;
import org.berrywatt.server.typed.Areas;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.Rules;
import org.berrywatt.server.typed.TypedValues;
import org.berrywatt.server.typed.TypedValues.Unusual;
import org.berrywatt.server.typed.Words;

/** Between lab days as they travel and lab days in SI units. */
final class LabDayConverter {

    private static final int LONGEST_TITLE = 80;
    private static final int MOST_CELLS = 12;

    private LabDayConverter() {}

    static LabDaySettings settings(LabDayRequest request) {
        return new LabDaySettings(
                Words.line("title", request.title(), LONGEST_TITLE),
                Given.date("date", Given.need("date", request.date())),
                TypedValues.number(
                                "referenceIrradiance",
                                request.referenceIrradiance(),
                                Unusual.TAKE,
                                Fields.REFERENCE_IRRADIANCE)
                        .valueSi(),
                TypedValues.area("referenceArea", request.referenceArea(), Fields.REFERENCE_AREA)
                        .areaM2(),
                Rules.read("rule", request.rule()).key(),
                Given.between("cellsPerTeam", request.cellsPerTeam(), 1, MOST_CELLS),
                request.teamsCreateThemselves());
    }

    static LabDayAnswer answer(LabDayEntity day, boolean withCode) {
        var settings = day.settings();
        return new LabDayAnswer(
                day.id(),
                settings.title(),
                settings.heldOn(),
                settings.referenceIrradianceWm2(),
                Areas.squareCentimetres(settings.referenceAreaM2()),
                settings.rule(),
                settings.cellsPerTeam(),
                settings.teamsCreateThemselves(),
                day.entryOpen(),
                day.resultsFinal(),
                day.keepUntil(),
                withCode ? day.code() : null,
                day.version());
    }
}
