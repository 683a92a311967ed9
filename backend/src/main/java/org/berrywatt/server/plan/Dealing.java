package org.berrywatt.server.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.PlanRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.plan.Allocation;
import org.berrywatt.plan.Design;
import org.berrywatt.plan.PlanRefused;
import org.berrywatt.plan.Timetable;
import org.berrywatt.plan.Wish;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.plan.PlanContent.PlannedRun;
import org.berrywatt.server.plan.PlanContent.Spread;
import org.berrywatt.server.platform.Refusal;
import org.springframework.stereotype.Component;

/** Makes plans from settings, and changes them by hand. */
@Component
class Dealing {

    private static final long SEEDS = 1_000_000;

    private final Cells cells;
    private final EarlierDays earlier;
    private final PlanRefusals refusals;
    private final PlanAnswers answers;

    Dealing(Cells cells, EarlierDays earlier, PlanRefusals refusals, PlanAnswers answers) {
        this.cells = cells;
        this.earlier = earlier;
        this.refusals = refusals;
        this.answers = answers;
    }

    /**
     * @param id whence the seed comes when none is given
     * @throws Refusal {@code plan...}, or when a setting is refused
     */
    PlanContent deal(UUID id, UUID labDayId, PlanRequest request, Caller caller) {
        var given = request.seed();
        var seed = given == null ? Math.floorMod(id.getLeastSignificantBits(), SEEDS) : given;
        var settings = PlanSettings.of(request, cells);
        requireDistinct(settings);
        try {
            var runs = runs(Allocation.of(settings.order(seed)));
            var content = new PlanContent(withSeed(request, seed), spread(labDayId, request, caller), runs);
            Timetable.of(answers.jobs(settings, content), settings.workshop(), seed);
            return content;
        } catch (PlanRefused refused) {
            throw refusals.of(refused, settings);
        }
    }

    /** @throws Refusal {@code plan.missing} for a cell that is not planned, {@code choice.unknown} for a strange level */
    PlanContent change(PlanContent content, String label, String parameter, int level) {
        var settings = PlanSettings.of(content.settings(), cells);
        for (int place = 0; place < content.runs().size(); place++) {
            if (content.runs().get(place).label().equals(label)) {
                return content.with(place, changed(content.runs().get(place), settings, parameter, level));
            }
        }
        throw Refusal.of(ProblemCode.PLAN_MISSING).value(label);
    }

    private void requireDistinct(PlanSettings settings) {
        settings.varied().stream().filter(Varied::repeats).findFirst().ifPresent(varied -> {
            throw Refusal.of(ProblemCode.PLAN_LEVEL_TWICE)
                    .field("factors")
                    .value(refusals.parameter(varied.parameter()));
        });
    }

    private static PlannedRun changed(PlannedRun run, PlanSettings settings, String parameter, int level) {
        var levels = new ArrayList<>(run.levels());
        for (int i = 0; i < settings.varied().size(); i++) {
            var varied = settings.varied().get(i);
            if (varied.parameter().equals(parameter)
                    && level >= 0
                    && level < varied.levels().size()) {
                levels.set(i, level);
                return new PlannedRun(run.label(), run.team(), List.copyOf(levels), true);
            }
        }
        throw Refusal.of(ProblemCode.CHOICE_UNKNOWN)
                .field("level")
                .value(parameter + " " + level)
                .limit(String.join(
                        ", ", settings.varied().stream().map(Varied::parameter).toList()));
    }

    private Spread spread(UUID labDayId, PlanRequest request, Caller caller) {
        var typed = request.spread();
        if (typed != null) {
            return new Spread(typed, "typed", 0);
        }
        var alike = earlier.spread(labDayId, caller);
        return alike.enough()
                ? new Spread(alike.spread(), "earlier", alike.degreesOfFreedom())
                : new Spread(Wish.USUAL_SPREAD, "usual", 0);
    }

    private static List<PlannedRun> runs(Design design) {
        var runs = new ArrayList<PlannedRun>();
        int[] made = new int[design.runs().size()];
        for (var run : design.runs()) {
            made[run.block()]++;
            runs.add(new PlannedRun(Labels.of(run.block(), made[run.block()]), run.block() + 1, run.levels(), false));
        }
        return List.copyOf(runs);
    }

    private static PlanRequest withSeed(PlanRequest asked, long seed) {
        return new PlanRequest(
                asked.teams(),
                asked.cellsPerTeam(),
                asked.factors(),
                asked.fixed(),
                asked.forbidden(),
                asked.heaters(),
                asked.stations(),
                asked.minutes(),
                asked.ratio(),
                asked.spread(),
                asked.standardCell(),
                asked.undyedControl(),
                asked.wastePercent(),
                seed);
    }
}
