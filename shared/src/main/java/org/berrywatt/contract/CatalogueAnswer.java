package org.berrywatt.contract;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Everything a form needs to know: fields with units and ranges, build parameters, stages, lamps, rules.
 *
 * @param meterZeroSteps steps of the last digit that a meter's zero is off at most; more is asked about
 */
public record CatalogueAnswer(
        List<Unit> units,
        List<Field> fields,
        List<Parameter> parameters,
        List<StageChoice> stages,
        List<String> lamps,
        List<String> instruments,
        List<MetricChoice> metrics,
        int meterZeroSteps) {

    /**
     * What a day may rank by, the default first.
     *
     * @param unit unit key of its figures
     * @param counts keys of the ways in which a team's cells may count under it, the usual one first
     */
    public record MetricChoice(String key, String unit, List<String> counts) {}

    /**
     * A unit that may be typed.
     *
     * @param symbols every spelling that is understood, first the one to show
     * @param toSi value in SI = typed value * toSi + offsetSi
     */
    public record Unit(String key, String quantity, List<String> symbols, double toSi, double offsetSi) {}

    /**
     * A numeric field; ranges in SI, closed intervals.
     *
     * @param units unit keys to offer, the default first
     */
    public record Field(
            String key,
            String quantity,
            List<String> units,
            double possibleLowSi,
            double possibleHighSi,
            double usualLowSi,
            double usualHighSi) {}

    /**
     * A build parameter.
     *
     * @param kind {@code "number"} or {@code "sort"}
     * @param field key of the numeric field that describes it, for numbers
     * @param levels level keys to choose from, for sorts
     * @param openLevels those of them that need the team's own words
     */
    public record Parameter(
            String key,
            String stage,
            String kind,
            @Nullable String field,
            List<String> levels,
            List<String> openLevels) {}

    /** A stage with the kinds of failure that may end it. */
    public record StageChoice(String key, List<String> failures, boolean hot) {}
}
