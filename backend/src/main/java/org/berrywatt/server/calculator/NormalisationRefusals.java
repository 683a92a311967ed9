package org.berrywatt.server.calculator;

import java.util.Map;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.normalise.NormalisationRefused;
import org.berrywatt.server.platform.Refusal;

/** A measurement without a result as a problem. */
final class NormalisationRefusals {

    /** Field and unit of each quantity that the science can refuse though the doors let it pass. */
    private static final Map<String, String> FIELDS = Map.of(
            "area", "areaCm2 m²",
            "voltage", "voltageV V",
            "current", "currentA A",
            "effectiveIrradiance", "light W/m²");

    private NormalisationRefusals() {}

    static Refusal of(NormalisationRefused refused) {
        if (refused.quantity().equals("photocurrent")) {
            return Refusal.of(ProblemCode.CALCULATION_NO_PHOTOCURRENT)
                    .field("darkCurrentA")
                    .value(refused.value());
        }
        var field = FIELDS.get(refused.quantity());
        return field == null ? Refusal.of(ProblemCode.CALCULATION_NO_RESULT) : outOfRange(refused, field.split(" "));
    }

    private static Refusal outOfRange(NormalisationRefused refused, String[] fieldAndUnit) {
        return Refusal.of(ProblemCode.CALCULATION_OUT_OF_RANGE)
                .field(fieldAndUnit[0])
                .value(refused.value())
                .limit(refused.limit() + " " + fieldAndUnit[1]);
    }
}
