package org.berrywatt.server.data;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.labday.LabDay;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.leaderboard.Leaderboards;
import org.berrywatt.server.platform.Refusal;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;

/** The tables of a lab day, one for each kind of thing. */
@Service
class Tables {

    private static final String RESULTS = "results";
    private static final List<String> RECORDED = List.of(
            "day",
            "day_changes",
            "teams",
            "cells",
            "recipes",
            "stages",
            "work",
            "stations",
            "spectra",
            "irradiance",
            "evenness",
            "control_cell",
            "readings",
            "sweep_points",
            "toggles",
            "set_asides",
            "paper");

    /** All tables, the results last. */
    static final List<String> NAMES =
            Stream.concat(RECORDED.stream(), Stream.of(RESULTS)).toList();

    private final LabDays days;
    private final JdbcTemplate store;
    private final ResultTable results;

    Tables(LabDays days, Leaderboards leaderboards, JdbcTemplate store) {
        this.days = days;
        this.store = store;
        this.results = new ResultTable(leaderboards);
    }

    /** @throws Refusal {@code notFound} */
    LabDay day(UUID id) {
        return days.find(id).orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
    }

    List<Column> columns(String table) {
        return table.equals(RESULTS) ? results.columns() : new RecordedTable(table, store).columns();
    }

    /** Writes one table of a day as it stands at one moment. */
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public void write(String table, UUID labDayId, Layout layout, Appendable out) throws IOException {
        if (table.equals(RESULTS)) {
            results.write(labDayId, layout, out);
        } else {
            new RecordedTable(table, store).write(labDayId, layout, out);
        }
    }

    /** How many rows each table has, without its header. */
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public Map<String, Long> rows(UUID labDayId) {
        var rows = new HashMap<String, Long>();
        RECORDED.forEach(name -> rows.put(name, new RecordedTable(name, store).rows(labDayId)));
        rows.put(RESULTS, results.rows(labDayId));
        return rows;
    }

    /** Writes all tables of a day into a file, as they stand at one moment. */
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public void writeAll(UUID labDayId, ZipOutputStream zip) throws IOException {
        var out = new OutputStreamWriter(zip, StandardCharsets.UTF_8);
        for (String name : NAMES) {
            zip.putNextEntry(new ZipEntry(name + ".csv"));
            write(name, labDayId, Layout.PLAIN, out);
            out.flush();
        }
    }
}
