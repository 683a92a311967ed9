package org.berrywatt.server.cell;

import java.util.Optional;
import java.util.UUID;
import org.berrywatt.cell.BuildCatalogue;
import org.berrywatt.cell.BuildParameter;
import org.berrywatt.contract.CellAnswer;
import org.berrywatt.contract.OutcomeAnswer;
import org.berrywatt.contract.RecipeValue;
import org.berrywatt.quantity.MeasuringUnit;
import org.berrywatt.quantity.Units;
import org.berrywatt.server.typed.Areas;
import org.jspecify.annotations.Nullable;

/** Cells as they travel. */
final class CellAnswers {

    private CellAnswers() {}

    static CellAnswer of(CellRecord record) {
        var cell = record.cell();
        var sheet = record.presentSheet();
        var area = sheet.area();
        return new CellAnswer(
                cell.id(),
                cell.teamId(),
                cell.labDayId(),
                cell.label(),
                sheet.id(),
                record.recipe().stream().map(CellAnswers::value).toList(),
                area == null ? null : area.typed(),
                area == null ? null : Areas.squareCentimetres(area.areaM2()),
                area == null ? null : Areas.squareCentimetres(area.standardUncertaintyM2()),
                record.outcomes().stream()
                        .map(outcome -> outcome(outcome, record.replacementOf(outcome)))
                        .toList(),
                record.events().stream().map(CellEventEntity::answer).toList(),
                cell.origin().acceptedAt());
    }

    /** One outcome out of a cell's answer. */
    static OutcomeAnswer outcome(CellAnswer cell, UUID id) {
        return cell.outcomes().stream()
                .filter(outcome -> outcome.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static OutcomeAnswer outcome(StageOutcomeEntity outcome, @Nullable UUID replacedBy) {
        var view = outcome.view();
        return new OutcomeAnswer(
                view.id(),
                outcome.cellId(),
                view.stage(),
                view.passed(),
                view.failure(),
                outcome.note(),
                outcome.origin().writer(),
                view.acceptedAt(),
                replacedBy);
    }

    private static RecipeValue value(RecipeEntry entry) {
        return new RecipeValue(entry.parameter(), entry.text(), entry.unit(), number(entry), entry.words());
    }

    private static @Nullable Double number(RecipeEntry entry) {
        var valueSi = entry.valueSi();
        return valueSi == null
                ? null
                : baseUnit(entry.parameter()).map(unit -> unit.fromSi(valueSi)).orElse(valueSi);
    }

    private static Optional<MeasuringUnit> baseUnit(String parameter) {
        return BuildCatalogue.of(parameter)
                .map(BuildParameter::field)
                .map(field -> field.unitKeys().get(0))
                .flatMap(Units::of);
    }
}
