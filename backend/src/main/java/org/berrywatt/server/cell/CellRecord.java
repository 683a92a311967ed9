package org.berrywatt.server.cell;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A cell with everything ever written about it.
 *
 * @param sheets every build sheet, in any order
 * @param outcomes every stage outcome, oldest first
 * @param events refills and repairs, oldest first
 */
record CellRecord(
        CellEntity cell, List<BuildSheet> sheets, List<StageOutcomeEntity> outcomes, List<CellEventEntity> events) {

    Cell view() {
        var sheet = presentSheet();
        var area = sheet.area();
        return new Cell(
                cell.id(),
                cell.teamId(),
                cell.labDayId(),
                cell.label(),
                recipe(),
                area == null ? null : area.view(),
                standingOutcomes(),
                events.stream()
                        .filter(CellEventEntity::isRefill)
                        .map(event -> event.origin().acceptedAt())
                        .toList(),
                cell.origin().acceptedAt());
    }

    /** The sheet that no other one replaces. */
    BuildSheet presentSheet() {
        var replaced = replaced(sheets, BuildSheet::replaces);
        return sheets.stream()
                .filter(sheet -> !replaced.contains(sheet.id()))
                .findFirst()
                .orElseThrow();
    }

    List<RecipeEntry> recipe() {
        return presentSheet().recipe().stream()
                .sorted(Comparator.comparingInt(entry -> BuildKeys.position(entry.parameter())))
                .toList();
    }

    /** The outcome that corrects this one, if any. */
    @Nullable
    UUID replacementOf(StageOutcomeEntity outcome) {
        return outcomes.stream()
                .filter(later -> outcome.id().equals(later.replaces()))
                .map(StageOutcomeEntity::id)
                .findFirst()
                .orElse(null);
    }

    /** A stage that was done twice stands as it ended the last time. */
    private List<StageOutcome> standingOutcomes() {
        var replaced = replaced(outcomes, StageOutcomeEntity::replaces);
        Map<String, StageOutcome> latest = new LinkedHashMap<>();
        outcomes.stream()
                .filter(outcome -> !replaced.contains(outcome.id()))
                .map(StageOutcomeEntity::view)
                .forEach(outcome -> latest.put(outcome.stage(), outcome));
        return latest.values().stream()
                .sorted(Comparator.comparing(StageOutcome::acceptedAt))
                .toList();
    }

    private static <E> Set<UUID> replaced(Collection<E> all, Function<E, @Nullable UUID> replaces) {
        return all.stream().map(replaces).filter(Objects::nonNull).collect(Collectors.toSet());
    }
}
