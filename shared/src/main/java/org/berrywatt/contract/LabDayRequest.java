package org.berrywatt.contract;

import java.time.LocalDate;

/**
 * A lab day as the teacher sets it up.
 *
 * @param rule key of the scoring rule
 * @param cellsPerTeam number of cells each team declares, in [1, 12]
 * @param teamsCreateThemselves whether the day's code lets a phone name a new team
 */
public record LabDayRequest(
        String title,
        LocalDate date,
        Typed referenceIrradiance,
        Typed referenceArea,
        String rule,
        int cellsPerTeam,
        boolean teamsCreateThemselves) {}
