package org.berrywatt.contract;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A lab day's plan with everything that follows from it.
 *
 * @param version number of the saved version, from 1; 0 when there is no plan yet
 * @param settings what it was asked for; null likewise, as is everything below
 * @param says what it can tell and whether there is time, in sentences of the text catalogue
 */
public record PlanAnswer(
        UUID labDayId,
        int version,
        @Nullable PlanRequest settings,
        List<PlannedCellAnswer> cells,
        List<Sentence> says,
        @Nullable Figures figures,
        @Nullable Timetable timetable,
        List<Need> needs,
        List<Hazard> hazards) {

    /**
     * A sentence of the text catalogue; values named {@code factor}, {@code other} and {@code third} are parameters.
     *
     * @param weight {@code good}, {@code weak}, {@code cannot} or {@code note}
     */
    public record Sentence(String key, String weight, Map<String, Object> values) {}

    /**
     * The numbers behind the sentences.
     *
     * @param efficiency D-efficiency of the main effects within teams, in [0, 1]
     * @param spread geometric standard deviation of cells made alike
     * @param spreadFrom {@code usual}, {@code typed} or {@code earlier}
     * @param spreadCells degrees of freedom of earlier cells that it rests on, 0 otherwise
     */
    public record Figures(
            double efficiency,
            int cells,
            int teams,
            int spareCells,
            double spread,
            String spreadFrom,
            int spreadCells,
            List<FactorFigures> factors) {}

    /**
     * What the plan tells of one factor.
     *
     * @param counts number of cells of each level
     * @param efficiency share of the precision of a plan without any flaw, in [0, 1]
     * @param power chance of finding the wished ratio; null when nothing can be told
     * @param aliases what it is mixed up with
     */
    public record FactorFigures(
            String parameter,
            List<Integer> counts,
            int teamsComparing,
            double efficiency,
            @Nullable Double power,
            @Nullable Double smallestRatio,
            List<Alias> aliases) {}

    /**
     * Something that a factor is mixed up with.
     *
     * @param with parameters: none for the teams, one, or two that act together
     * @param correlation in [0, 1]
     */
    public record Alias(List<String> with, double correlation) {}

    /** When the last cell is measured, and who is where when. */
    public record Timetable(int endMin, int minutes, List<Slot> slots) {}

    /**
     * Some cells are somewhere for some time.
     *
     * @param kind "film", "counterElectrode", "bake", "dyeAndClose" or "measure"
     * @param place number of the team, heater or station, from 1; 0 for the class's own cells
     * @param cells labels, on a heater in the order of its positions
     * @param bakeC film temperature on a heater
     */
    public record Slot(
            String kind,
            int place,
            List<String> cells,
            int fromMin,
            int toMin,
            @Nullable Double bakeC) {}

    /**
     * Something to have ready.
     *
     * @param parameter build parameter whose level it is of, empty for what every cell takes
     * @param unit {@code count}, {@code g} or {@code mL}
     */
    public record Need(String key, String parameter, String level, int cells, double amount, String unit) {}

    /**
     * What can hurt at the steps of this plan.
     *
     * @param codes GHS codes of the material as supplied
     * @param stages where it comes up
     */
    public record Hazard(String key, String zone, List<String> codes, boolean adultPart, List<String> stages) {}
}
