package org.berrywatt.server.leaderboard;

import java.util.List;
import java.util.stream.Stream;
import org.berrywatt.contract.Remark;
import org.berrywatt.curve.SweepRefused;
import org.berrywatt.leaderboard.EvaluatedReading;
import org.berrywatt.light.Ultraviolet;
import org.berrywatt.normalise.LightAtCell;
import org.berrywatt.normalise.Normalisation;
import org.berrywatt.normalise.NormalisationRefused;
import org.berrywatt.normalise.Reference;
import org.berrywatt.normalise.Result;
import org.berrywatt.reading.Classification;
import org.berrywatt.reading.SolarClass;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.labday.LabDay;
import org.berrywatt.server.worked.Worked;
import org.berrywatt.uncertainty.Deviates;

/** Makes of a cell's records either a result or what is missing for one. */
final class CellJudge {

    private final DayRecord record;
    private final Reference reference;
    private final KnownCells known;
    private final Deviates deviates;

    CellJudge(DayRecord record, KnownCells known) {
        LabDay day = record.day();
        this.record = record;
        this.known = known;
        this.deviates = Draws.of(day.id());
        this.reference = new Reference(day.referenceIrradianceWm2(), day.referenceAreaM2());
    }

    Judged judge(Cell cell) {
        return cell.failure()
                .<Judged>map(outcome -> new Judged.Failed(cell, Remarks.failed(outcome)))
                .orElseGet(() -> judge(Gathered.of(cell, record)));
    }

    /** By these records of a cell that has not failed. */
    Judged judge(Gathered gathered) {
        return known.judged(record.day().id(), reference, gathered, () -> judgeAnew(gathered));
    }

    private Judged judgeAnew(Gathered gathered) {
        return gathered.complete()
                .map(read -> judge(gathered, read))
                .orElseGet(() -> new Judged.Waiting(gathered.cell(), gathered.missing()));
    }

    private Judged judge(Gathered gathered, ReadCell read) {
        try {
            Classification found = classified(gathered, read);
            List<Remark> told = told(gathered, read);
            return found.solarClass().counts()
                    ? counts(gathered, found, told, Normalisation.of(read.measurement(), reference))
                    : waiting(gathered, Remarks.classified(found));
        } catch (SweepRefused e) {
            return waiting(gathered, Remarks.SWEEP_UNUSABLE);
        } catch (NormalisationRefused e) {
            return waiting(gathered, Remarks.OUT_OF_RANGE);
        }
    }

    private static List<Remark> told(Gathered gathered, ReadCell read) {
        List<Remark> history = gathered.history().remarks(read.underLight(), read.darkA());
        return Stream.concat(history.stream(), Remarks.meterZero(read.covered()))
                .toList();
    }

    private static Classification classified(Gathered gathered, ReadCell read) {
        Ultraviolet ultraviolet =
                gathered.station().map(it -> it.lamp().ultraviolet()).orElse(Ultraviolet.POOR);
        return read.classification(
                gathered.history().litBefore(read.underLight().readAt()), ultraviolet);
    }

    private static Judged waiting(Gathered gathered, Remark why) {
        return new Judged.Waiting(gathered.cell(), List.of(why));
    }

    private Judged counts(Gathered gathered, Classification found, List<Remark> told, Result result) {
        Stream<Remark> mixed = Stream.of(found)
                .filter(it -> it.solarClass() == SolarClass.MIXED)
                .map(Remarks::classified);
        Stream<Remark> sweep = gathered.evidence().passedOver().map(reading -> Remarks.SWEEP_STANDS).stream();
        Stream<Remark> toggles = gathered.evidence().toggles().map(reading -> Remarks.TOGGLES_HELD).stream();
        Stream<Remark> notes = Worked.notes(result.notes());
        return new Judged.Counts(
                gathered.cell(),
                EvaluatedReading.of(gathered.cell().id(), result, deviates),
                gathered.light().map(LightAtCell::station).orElse(""),
                Stream.of(mixed, told.stream(), sweep, toggles, notes)
                        .flatMap(it -> it)
                        .toList());
    }
}
