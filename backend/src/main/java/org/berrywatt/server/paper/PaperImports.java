package org.berrywatt.server.paper;

import static java.util.stream.Collectors.groupingBy;

import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.berrywatt.contract.PaperAnswer;
import org.berrywatt.contract.PaperRequest;
import org.berrywatt.contract.PaperRequest.PaperFile;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.platform.ProblemSentences;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.platform.Texts;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Brings paper records in, all or nothing. */
@Service
class PaperImports {

    private static final int MOST_FILES = 20;

    /** Hibernate looks through all that it holds before every question; so it holds little. */
    private static final int HELD = 20;

    private final Doors doors;
    private final LabDays days;
    private final PaperLog log;
    private final ProblemSentences sentences;
    private final Texts texts;
    private final TransactionTemplate transaction;
    private final EntityManager store;

    PaperImports(
            Doors doors,
            LabDays days,
            PaperLog log,
            ProblemSentences sentences,
            Texts texts,
            TransactionTemplate transaction,
            EntityManager store) {
        this.doors = doors;
        this.days = days;
        this.log = log;
        this.sentences = sentences;
        this.texts = texts;
        this.transaction = transaction;
        this.store = store;
    }

    /**
     * Goes the whole way, row by row, and leaves everything as it was when that is all that is asked for, or when there is
     * anything to mend.
     *
     * @throws Refusal {@code labday.closed}, {@code labday.final}, {@code calculation.listLength} without files or with too many,
     *     {@code paper.tooManyRows} in all of them
     */
    PaperAnswer take(UUID labDayId, PaperRequest request, boolean check, Caller.Teacher teacher, Instant now) {
        var faults = new Faults(sentences);
        var zone = PaperTime.zone(request.zone());
        var sheets = files(request).stream()
                .map(file -> PaperSheet.read(file, faults))
                .toList();
        requireFew(sheets.stream().mapToInt(PaperSheet::count).sum(), faults);
        return Objects.requireNonNull(transaction.execute(status -> {
            var day = days.holdOpenAlone(labDayId);
            var rowCheck = new RowCheck(new PaperTime(day.date(), zone, now), new Choices(texts), faults);
            var entries = new Entries(labDayId, rowCheck, log.entries(labDayId), faults);
            enter(
                    sheets,
                    new PaperDay(doors, labDayId, teacher, new StandIns(doors, labDayId, teacher, now), faults),
                    entries);
            if (check || faults.any()) {
                status.setRollbackOnly();
            } else {
                log.write(labDayId, entries.fresh(), teacher, now);
            }
            return answer(sheets, entries, faults, check);
        }));
    }

    private static List<PaperFile> files(PaperRequest request) {
        var files = Given.need("files", request.files());
        if (files.isEmpty() || files.size() > MOST_FILES) {
            throw Refusal.of(ProblemCode.CALCULATION_LIST_LENGTH)
                    .field("files")
                    .value(files.size())
                    .limit("[1, " + MOST_FILES + "]");
        }
        var names = new HashSet<String>();
        return files.stream()
                .map(file -> new PaperFile(name(file, names), Given.need("csv", file.csv())))
                .toList();
    }

    /** A file that is too long by itself was told already. */
    private static void requireFew(int rows, Faults faults) {
        if (rows > PaperLines.MOST_ROWS && !faults.any()) {
            throw Refusal.of(ProblemCode.PAPER_TOO_MANY_ROWS)
                    .field("files")
                    .value(rows)
                    .limit(PaperLines.MOST_ROWS);
        }
    }

    /** Two files of one name are told apart. */
    private static String name(PaperFile file, Set<String> names) {
        var name = Words.excerpt(Given.need("name", file.name()));
        return names.add(name) ? name : name(new PaperFile(name + "'", file.csv()), names);
    }

    private void enter(List<PaperSheet> sheets, PaperDay day, Entries entries) {
        var choices = new Choices(texts);
        var built = new BuiltRows(day, entries, choices);
        var read = new ReadRows(day, entries, choices);
        var rows = rows(sheets);
        Arrays.stream(PaperTable.values()).forEach(table -> {
            var here = rows.getOrDefault(table, List.of());
            for (int from = 0; from < here.size(); from += table == PaperTable.SWEEP_POINTS ? here.size() : HELD) {
                var to = table == PaperTable.SWEEP_POINTS ? here.size() : Math.min(from + HELD, here.size());
                enter(table, here.subList(from, to), built, read);
                store.flush();
                store.clear();
            }
        });
    }

    private static void enter(PaperTable table, List<PaperRow> rows, BuiltRows built, ReadRows read) {
        switch (table) {
            case TEAMS -> rows.forEach(built::team);
            case STATIONS -> rows.forEach(built::station);
            case CELLS -> rows.forEach(built::cell);
            case STAGES -> rows.forEach(built::stage);
            case IRRADIANCE -> rows.forEach(read::irradiance);
            case READINGS -> rows.forEach(read::reading);
            case SWEEP_POINTS -> read.sweeps(rows);
        }
    }

    private static Map<PaperTable, List<PaperRow>> rows(List<PaperSheet> sheets) {
        var rows = new HashMap<PaperTable, List<PaperRow>>();
        sheets.stream()
                .filter(sheet -> sheet.table() != null)
                .collect(groupingBy(sheet -> Objects.requireNonNull(sheet.table())))
                .forEach((table, same) -> rows.put(
                        table,
                        same.stream().flatMap(sheet -> sheet.rows().stream()).toList()));
        return rows;
    }

    /** By file, then from the top. */
    private static List<PaperAnswer.Fault> inOrder(List<PaperSheet> sheets, List<PaperAnswer.Fault> faults) {
        var files = sheets.stream().map(PaperSheet::file).toList();
        return faults.stream()
                .sorted(Comparator.<PaperAnswer.Fault>comparingInt(fault -> files.indexOf(fault.file()))
                        .thenComparingInt(fault -> fault.row() == null ? 0 : fault.row()))
                .toList();
    }

    private static PaperAnswer answer(List<PaperSheet> sheets, Entries entries, Faults faults, boolean check) {
        return new PaperAnswer(
                sheets.stream().map(sheet -> answer(sheet, entries)).toList(),
                inOrder(sheets, faults.first()),
                faults.count(),
                !check && !faults.any());
    }

    private static PaperAnswer.Sheet answer(PaperSheet sheet, Entries entries) {
        return new PaperAnswer.Sheet(
                sheet.file(),
                key(sheet.table()),
                sheet.count(),
                entries.count(sheet.file(), true),
                entries.count(sheet.file(), false));
    }

    private static @Nullable String key(@Nullable PaperTable table) {
        return table == null ? null : table.key();
    }
}
