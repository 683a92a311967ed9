package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * What is looked for is found by an index, so that a reading costs the same among the readings of one day and of ten thousand. The
 * planner is told to read no table through where it can help it, since the tables of a test are too small for an index to pay.
 */
@ServerTest
class IndexesTest {

    private static final String BELONGS = """
            select format('select * from %I where %I = ''00000000-0000-0000-0000-000000000000''', child.relname, col.attname)
            from pg_constraint bond
            join pg_class child on child.oid = bond.conrelid
            join pg_attribute col on col.attrelid = bond.conrelid and col.attnum = bond.conkey[1]
            where bond.contype = 'f' and bond.connamespace = 'public'::regnamespace and cardinality(bond.conkey) = 1
                and bond.confdeltype = 'c' and format_type(col.atttypid, null) = 'uuid'
            """;

    private final JdbcClient database;
    private final TransactionTemplate transaction;

    @Autowired
    IndexesTest(JdbcClient database, TransactionTemplate transaction) {
        this.database = database;
        this.transaction = transaction;
    }

    @Test
    void findWhateverBelongsToADayATeamACellOrAReading() {
        List<String> questions = database.sql(BELONGS).query(String.class).list();

        assertThat(questions).hasSizeGreaterThan(15);
        assertThat(questions).filteredOn(this::readsATableThrough).isEmpty();
    }

    @Test
    void findWhatEachRequestAsksFor() {
        var questions = List.of(
                "select * from pass where token_hash = ''",
                "select * from receipt where id = '00000000-0000-0000-0000-000000000000'",
                "select * from lab_day where code = ''",
                "select * from team where code = ''",
                "select * from teacher where name_folded = ''",
                "select * from reading where replaces = '00000000-0000-0000-0000-000000000000'",
                "select * from live_feed where lab_day_id = '00000000-0000-0000-0000-000000000000' and kind = ''",
                "select * from live_revision where lab_day_id = '00000000-0000-0000-0000-000000000000'",
                """
                        select * from reading r where lab_day_id = '00000000-0000-0000-0000-000000000000'
                            and not exists (select from reading c where c.replaces = r.id)
                            and not exists (select from reading_set_aside s where s.reading_id = r.id)
                        """);
        assertThat(questions).filteredOn(this::readsATableThrough).isEmpty();
    }

    private boolean readsATableThrough(String question) {
        return transaction.execute(status -> {
            database.sql("set local enable_seqscan = off").update();
            return database.sql("explain " + question).query(String.class).list().stream()
                    .anyMatch(line -> line.contains("Seq Scan"));
        });
    }
}
