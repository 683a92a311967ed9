package org.berrywatt.findings;

import java.util.List;
import java.util.Optional;
import org.berrywatt.statistics.KruskalWallis;
import org.berrywatt.statistics.Spearman;

/**
 * One build parameter against the power of the cells that work, with the yield of every level beside it.
 *
 * <p>Tests look at the cells that count; when no team tried two levels, at one median per team. Either test is empty when
 * there is nothing to compare.
 *
 * @param levels numbers ascending, sorts by key; empty when the parameter was recorded for no cell
 * @param spearman for numbers
 * @param kruskalWallis for sorts, and for numbers with few levels that repeat
 * @param notes the yield first, when a cell was made
 */
public record ParameterFinding(
        List<Level> levels,
        Optional<Spearman> spearman,
        Optional<KruskalWallis> kruskalWallis,
        Strength strength,
        Sentence sentence,
        List<Sentence> notes) {

    /** Finding about a numeric parameter; each observation whose level is recorded has a number. */
    public static ParameterFinding onNumbers(List<Observation> cells) {
        Levels levels = Levels.of(cells);
        Entries entries = Entries.of(Worked.among(cells));
        Optional<Spearman> spearman = entries.spearman().value();
        Optional<KruskalWallis> kruskalWallis =
                levels.areFew() ? entries.kruskalWallis().value() : Optional.empty();
        Verdict verdict = Verdict.nothingToCompare(levels, entries)
                .orElseGet(() -> Verdict.onNumbers(levels, spearman, kruskalWallis));
        List<Sentence> notes = new Notes(levels, entries, verdict, notRecorded(cells)).all();
        return new ParameterFinding(
                levels.all(), spearman, kruskalWallis, verdict.strength(), verdict.sentence(), notes);
    }

    /** Finding about a parameter whose levels have no order. */
    public static ParameterFinding onSorts(List<Observation> cells) {
        Levels levels = Levels.of(cells);
        Entries entries = Entries.of(Worked.among(cells));
        Optional<KruskalWallis> kruskalWallis = entries.kruskalWallis().value();
        Verdict verdict =
                Verdict.nothingToCompare(levels, entries).orElseGet(() -> Verdict.onSorts(levels, kruskalWallis));
        List<Sentence> notes = new Notes(levels, entries, verdict, notRecorded(cells)).all();
        return new ParameterFinding(
                levels.all(), Optional.empty(), kruskalWallis, verdict.strength(), verdict.sentence(), notes);
    }

    private static long notRecorded(List<Observation> cells) {
        return cells.stream().filter(cell -> !cell.recorded()).count();
    }
}
