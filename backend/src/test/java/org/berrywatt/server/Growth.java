package org.berrywatt.server;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.berrywatt.server.leaderboard.Leaderboards;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What one reading costs with more and more days stored, and whether the database reads large tables through for it. */
final class Growth {

    private static final int READINGS = 300;
    private static final int WARM_UP = 5;
    private static final String ROWS_READ_THROUGH =
            "select coalesce(sum(seq_tup_read), 0) from pg_stat_user_tables where n_live_tup > 1000";

    private final ApplicationContext server;
    private final JdbcClient database;

    Growth(ApplicationContext server) {
        this.server = server;
        this.database = server.getBean(JdbcClient.class);
    }

    void measure() throws IOException {
        var template = new SchoolDay(new Rehearsal(server), 1);
        template.fill(30);
        var stored = new StoredDays(database, template.id());
        for (int round = 0; round < WARM_UP; round++) {
            costMs();
        }
        double one = costMs();
        stored.add(1, 100);
        settle();
        double hundred = costMs();
        stored.add(101, 10_000);
        settle();
        long before = rowsReadThrough();
        double many = costMs();
        long readThrough = rowsReadThrough() - before;
        OneSchool.say("rows of large tables read through meanwhile: %d (goal 0)", readThrough);
        OneSchool.say(
                "one reading and its leaderboard with 1, 100, 10000 days stored: %.2f, %.2f, %.2f ms; ratios %.2f, %.2f (goal 1.2)",
                one, hundred, many, hundred / one, many / one);
        Promise.keep(
                "growth",
                List.of(
                        row(100, hundred, one),
                        row(10_000, many, one),
                        Promise.row(
                                "rows of tables of more than 1 000 that the database read through for %d such readings"
                                        .formatted(READINGS),
                                "with 10000 days stored, the database's own count",
                                "0",
                                String.valueOf(readThrough),
                                readThrough == 0)));
    }

    private static String row(int days, double costMs, double oneMs) {
        return Promise.row(
                "cost of one reading and its leaderboard with %d days stored".formatted(days),
                "with 1 day stored, median of " + READINGS,
                "≤ 1.2",
                String.format(Locale.ROOT, "%.2f (%.2f ms, %.2f ms)", costMs / oneMs, costMs, oneMs),
                costMs <= 1.2 * oneMs);
    }

    /** What the database would do in the night after so many days at once. */
    private void settle() {
        database.sql("vacuum analyze").update();
        database.sql("checkpoint").update();
        costMs();
    }

    private long rowsReadThrough() {
        return database.sql(ROWS_READ_THROUGH).query(Long.class).single();
    }

    /** Median of accepting a reading and computing the leaderboard, in a day of its own. */
    private double costMs() {
        var day = new SchoolDay(new Rehearsal(server), 1);
        day.fill(9);
        var leaderboards = server.getBean(Leaderboards.class);
        double[] ms = IntStream.range(0, READINGS)
                .mapToDouble(round -> {
                    long start = System.nanoTime();
                    day.fill(1);
                    leaderboards.of(day.id());
                    return (System.nanoTime() - start) / 1e6;
                })
                .sorted()
                .toArray();
        return ms[ms.length / 2];
    }
}
