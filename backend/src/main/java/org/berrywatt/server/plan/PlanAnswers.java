package org.berrywatt.server.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.berrywatt.contract.PlanAnswer;
import org.berrywatt.contract.PlannedCellAnswer;
import org.berrywatt.plan.Allocation;
import org.berrywatt.plan.Design;
import org.berrywatt.plan.FactorFigures;
import org.berrywatt.plan.Job;
import org.berrywatt.plan.PlanFigures;
import org.berrywatt.plan.Quantities;
import org.berrywatt.plan.Run;
import org.berrywatt.plan.Slot;
import org.berrywatt.plan.Statement;
import org.berrywatt.plan.Statements;
import org.berrywatt.plan.TimeStatements;
import org.berrywatt.plan.Timetable;
import org.berrywatt.plan.Wish;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.cell.RecipeEntry;
import org.springframework.stereotype.Component;

/** Plans as they travel, with everything that follows from what is stored. */
@Component
class PlanAnswers {

    private static final double USUAL_BAKE_C = 450;
    private static final double USUAL_HOLD_MIN = 30;
    private static final double USUAL_SOAK_MIN = 20;

    private final Cells cells;

    PlanAnswers(Cells cells) {
        this.cells = cells;
    }

    static PlanAnswer none(UUID labDayId) {
        return new PlanAnswer(labDayId, 0, null, List.of(), List.of(), null, null, List.of(), List.of());
    }

    PlanAnswer of(UUID labDayId, int version, PlanContent content, List<PlannedCellAnswer> planned) {
        var settings = PlanSettings.of(content.settings(), cells);
        var wish = new Wish(settings.request().ratio(), content.spread().value());
        var figures = PlanFigures.of(design(settings, content), wish);
        var workshop = settings.workshop();
        var timetable = Timetable.of(jobs(settings, content), workshop, content.seed());
        var says = new ArrayList<PlanAnswer.Sentence>();
        Statements.of(figures, wish).forEach(statement -> says.add(sentence(statement)));
        TimeStatements.of(timetable, workshop).forEach(statement -> says.add(sentence(statement)));
        return new PlanAnswer(
                labDayId,
                version,
                content.settings(),
                planned,
                says,
                figures(figures, content.spread()),
                timetable(timetable, workshop.minutes()),
                needs(settings, content),
                PlanHazards.of(recipes(settings, content)));
    }

    /** What heaters and stations have to do. */
    List<Job> jobs(PlanSettings settings, PlanContent content) {
        return planned(settings, content).stream()
                .map(planned -> job(planned.label(), planned.team(), planned.recipe()))
                .toList();
    }

    /** Every cell of a plan, the class's own last. */
    List<Planned> planned(PlanSettings settings, PlanContent content) {
        var all = new ArrayList<Planned>();
        content.runs().forEach(run -> all.add(Planned.of(run, settings.recipe(run.levels()))));
        var first = Allocation.standard(settings.order(content.seed()));
        if (settings.request().standardCell()) {
            all.add(new Planned(Labels.STANDARD, "standard", 0, first, settings.recipe(first), false));
        }
        if (settings.request().undyedControl()) {
            all.add(new Planned(Labels.UNDYED, "undyed", 0, first, Planned.undyed(settings.recipe(first)), false));
        }
        return all;
    }

    private static Job job(String label, int team, List<RecipeEntry> recipe) {
        var undyed = "none".equals(Recipes.sorts(recipe).get("dyeSource"));
        return new Job(
                label,
                team,
                Recipes.number(recipe, "bakeTemperature", "degC", USUAL_BAKE_C),
                Recipes.number(recipe, "bakeTime", "min", USUAL_HOLD_MIN),
                undyed ? 0 : Recipes.number(recipe, "soakTime", "min", USUAL_SOAK_MIN));
    }

    private static Design design(PlanSettings settings, PlanContent content) {
        return new Design(
                settings.varied().stream().map(Varied::factor).toList(),
                content.runs().stream()
                        .map(run -> new Run(run.team() - 1, run.levels()))
                        .toList());
    }

    private List<Map<String, String>> recipes(PlanSettings settings, PlanContent content) {
        return planned(settings, content).stream()
                .map(planned -> Recipes.sorts(planned.recipe()))
                .toList();
    }

    private List<PlanAnswer.Need> needs(PlanSettings settings, PlanContent content) {
        return Quantities.of(recipes(settings, content), settings.request().wastePercent() / 100.0).stream()
                .map(need -> new PlanAnswer.Need(
                        need.key(), need.parameter(), need.level(), need.cells(), need.amount(), need.unit()))
                .toList();
    }

    private static PlanAnswer.Sentence sentence(Statement statement) {
        return new PlanAnswer.Sentence(
                statement.key(), statement.weight().name().toLowerCase(Locale.ROOT), statement.values());
    }

    private static PlanAnswer.Figures figures(PlanFigures figures, PlanContent.Spread spread) {
        return new PlanAnswer.Figures(
                figures.efficiency(),
                figures.cells(),
                figures.teams(),
                figures.spareCells(),
                spread.value(),
                spread.from(),
                spread.cells(),
                figures.factors().stream().map(PlanAnswers::factor).toList());
    }

    private static PlanAnswer.FactorFigures factor(FactorFigures factor) {
        return new PlanAnswer.FactorFigures(
                factor.factor().key(),
                factor.counts(),
                factor.teamsComparing(),
                factor.efficiency(),
                factor.power(),
                factor.smallestRatio(),
                factor.aliases().stream()
                        .map(alias -> new PlanAnswer.Alias(alias.with(), alias.correlation()))
                        .toList());
    }

    private static PlanAnswer.Timetable timetable(Timetable timetable, int minutes) {
        return new PlanAnswer.Timetable(
                timetable.endMin(),
                minutes,
                timetable.slots().stream().map(PlanAnswers::slot).toList());
    }

    private static PlanAnswer.Slot slot(Slot slot) {
        return new PlanAnswer.Slot(
                slot.kind().key(),
                slot.place(),
                slot.cells(),
                slot.fromMin(),
                slot.toMin(),
                Double.isNaN(slot.bakeC()) ? null : slot.bakeC());
    }
}
