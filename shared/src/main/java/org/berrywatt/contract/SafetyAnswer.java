package org.berrywatt.contract;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Hazard zones, hazards with their usual GHS codes, and what brings which to a stage. */
public record SafetyAnswer(List<ZoneChoice> zones, List<HazardNote> hazards, List<Trigger> triggers) {

    /**
     * A hazard zone.
     *
     * @param gated whether a stage in it counts as done only under a valid sign-off
     * @param points keys of what the briefing goes through
     */
    public record ZoneChoice(String key, boolean gated, List<String> points) {}

    /**
     * A hazard.
     *
     * @param codes usual GHS codes of the material as supplied
     * @param adultPart whether a part of the work is the teacher's alone
     */
    public record HazardNote(
            String key,
            String zone,
            List<String> codes,
            boolean adultPart,
            List<Strength> strengths,
            @Nullable Double flashPointC,
            @Nullable Double selfIgnitionC) {}

    /** How a solution is labelled from a strength on. */
    public record Strength(double fromMassPercent, double fromMolPerL, List<String> codes) {}

    /**
     * What brings a hazard to a stage.
     *
     * @param parameter build parameter that decides; null when the stage always brings the hazard
     * @param levels levels that bring it
     * @param unrecorded whether it counts as there while the parameter is not recorded
     */
    public record Trigger(
            String hazard, String stage, @Nullable String parameter, List<String> levels, boolean unrecorded) {}
}
