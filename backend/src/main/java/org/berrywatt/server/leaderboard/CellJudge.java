package org.berrywatt.server.leaderboard;

import java.util.List;
import java.util.stream.Stream;
import org.berrywatt.contract.Remark;
import org.berrywatt.curve.SweepRefused;
import org.berrywatt.normalise.Normalisation;
import org.berrywatt.normalise.NormalisationRefused;
import org.berrywatt.normalise.Reference;
import org.berrywatt.normalise.Result;
import org.berrywatt.reading.Classification;
import org.berrywatt.reading.SolarClass;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.labday.LabDay;

/** Makes of a cell's records either a result or what is missing for one. */
final class CellJudge {

    private final DayRecord record;
    private final Reference reference;

    CellJudge(DayRecord record) {
        LabDay day = record.day();
        this.record = record;
        this.reference = new Reference(day.referenceIrradianceWm2(), day.referenceAreaM2());
    }

    Judged judge(Cell cell) {
        return cell.failure()
                .<Judged>map(outcome -> new Judged.Failed(cell, Remarks.failed(outcome)))
                .orElseGet(() -> judge(Gathered.of(cell, record)));
    }

    private Judged judge(Gathered gathered) {
        return gathered.complete()
                .map(read -> judge(gathered, read))
                .orElseGet(() -> new Judged.Waiting(gathered.cell(), gathered.missing()));
    }

    private Judged judge(Gathered gathered, ReadCell read) {
        try {
            Classification found = read.classification();
            return found.solarClass().counts()
                    ? counts(gathered, found, Normalisation.of(read.measurement(), reference))
                    : waiting(gathered, Remarks.classified(found));
        } catch (SweepRefused e) {
            return waiting(gathered, Remarks.SWEEP_UNUSABLE);
        } catch (NormalisationRefused e) {
            return waiting(gathered, Remarks.OUT_OF_RANGE);
        }
    }

    private static Judged waiting(Gathered gathered, Remark why) {
        return new Judged.Waiting(gathered.cell(), List.of(why));
    }

    private static Judged counts(Gathered gathered, Classification found, Result result) {
        Stream<Remark> mixed = Stream.of(found)
                .filter(it -> it.solarClass() == SolarClass.MIXED)
                .map(Remarks::classified);
        Stream<Remark> sweep = gathered.evidence().passedOver().map(reading -> Remarks.SWEEP_STANDS).stream();
        Stream<Remark> notes = result.notes().stream().map(Remarks::note);
        return new Judged.Counts(
                gathered.cell(),
                result,
                Stream.of(mixed, sweep, notes).flatMap(it -> it).toList());
    }
}
