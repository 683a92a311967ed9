package org.berrywatt.server.plan;

import org.berrywatt.cell.BuildCatalogue;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.plan.PlanFault;
import org.berrywatt.plan.PlanRefused;
import org.berrywatt.quantity.Units;
import org.berrywatt.server.cell.RecipeEntry;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.platform.Texts;
import org.springframework.stereotype.Component;

/** Words what makes a plan impossible. */
@Component
class PlanRefusals {

    private final Texts texts;

    PlanRefusals(Texts texts) {
        this.texts = texts;
    }

    Refusal of(PlanRefused refused, PlanSettings settings) {
        var subject = refused.subject();
        var refusal = Refusal.of(code(refused.fault())).limit(refused.limit());
        return switch (refused.fault()) {
            case ONE_LEVEL -> refusal.value(parameter(subject));
            case TOO_MANY_LEVELS -> refusal.value(refused.value()).with("factor", parameter(subject));
            case LEVEL_NEVER_ALLOWED -> refusal.value(level(subject, settings));
            default -> refusal.value(refused.value());
        };
    }

    /** The name of a parameter in the language of the request; one of the class's own is its own name. */
    String parameter(String key) {
        var text = "catalogue.parameter." + key;
        return texts.has(text) ? texts.say(text) : key;
    }

    private String level(String subject, PlanSettings settings) {
        int colon = subject.lastIndexOf(':');
        var parameter = subject.substring(0, colon);
        int level = Integer.parseInt(subject.substring(colon + 1));
        return settings.varied().stream()
                .filter(varied -> varied.parameter().equals(parameter))
                .map(varied -> name(varied.levels().get(level)))
                .findFirst()
                .orElseThrow();
    }

    private String name(RecipeEntry entry) {
        var unit = entry.unit();
        if (unit != null) {
            return entry.text() + " " + Units.of(unit).orElseThrow().symbol();
        }
        return BuildCatalogue.of(entry.parameter()).isPresent()
                ? texts.say("catalogue.level." + entry.parameter() + "." + entry.text())
                : entry.text();
    }

    private static ProblemCode code(PlanFault fault) {
        return switch (fault) {
            case NO_FACTOR -> ProblemCode.PLAN_NOTHING_VARIED;
            case ONE_LEVEL -> ProblemCode.PLAN_ONE_LEVEL;
            case TOO_MANY_LEVELS -> ProblemCode.PLAN_TOO_MANY_LEVELS;
            case TOO_MANY_FACTORS -> ProblemCode.PLAN_TOO_MANY_FACTORS;
            case TOO_FEW_CELLS -> ProblemCode.PLAN_TOO_FEW_CELLS;
            case EVERYTHING_FORBIDDEN -> ProblemCode.PLAN_EVERYTHING_FORBIDDEN;
            case LEVEL_NEVER_ALLOWED -> ProblemCode.PLAN_LEVEL_NEVER_ALLOWED;
            case NO_TIME -> ProblemCode.PLAN_NO_TIME;
            case NO_HEATER -> ProblemCode.PLAN_NO_HEATER;
        };
    }
}
