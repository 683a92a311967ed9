package org.berrywatt.server.labday;

import jakarta.persistence.Embeddable;
import java.time.LocalDate;

/** What a teacher may edit about a lab day, in SI units. */
@Embeddable
record LabDaySettings(
        String title,
        LocalDate heldOn,
        double referenceIrradianceWm2,
        double referenceAreaM2,
        String rule,
        int cellsPerTeam,
        boolean teamsCreateThemselves) {}
