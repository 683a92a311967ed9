package org.berrywatt.server.safety;

import java.util.Arrays;
import org.berrywatt.contract.SafetyAnswer;
import org.berrywatt.safety.Hazard;
import org.berrywatt.safety.Hazards;
import org.berrywatt.safety.Strength;
import org.berrywatt.safety.Trigger;
import org.berrywatt.safety.Zone;

/** Zones and hazards as they travel. */
final class SafetyCatalogue {

    private SafetyCatalogue() {}

    static SafetyAnswer answer() {
        return new SafetyAnswer(
                Arrays.stream(Zone.values()).map(SafetyCatalogue::zone).toList(),
                Arrays.stream(Hazard.values()).map(SafetyCatalogue::hazard).toList(),
                Hazards.triggers().stream().map(SafetyCatalogue::trigger).toList());
    }

    private static SafetyAnswer.ZoneChoice zone(Zone zone) {
        return new SafetyAnswer.ZoneChoice(zone.key(), zone.gated(), zone.points());
    }

    private static SafetyAnswer.HazardNote hazard(Hazard hazard) {
        return new SafetyAnswer.HazardNote(
                hazard.key(),
                hazard.zone().key(),
                hazard.codes(),
                hazard.adultPart(),
                hazard.strengths().stream().map(SafetyCatalogue::strength).toList(),
                hazard.flashPointC(),
                hazard.selfIgnitionC());
    }

    private static SafetyAnswer.Strength strength(Strength strength) {
        return new SafetyAnswer.Strength(strength.fromMassPercent(), strength.fromMolPerL(), strength.codes());
    }

    private static SafetyAnswer.Trigger trigger(Trigger trigger) {
        return new SafetyAnswer.Trigger(
                trigger.hazard().key(),
                trigger.stage().key(),
                trigger.parameter(),
                trigger.levels(),
                trigger.unrecorded());
    }
}
