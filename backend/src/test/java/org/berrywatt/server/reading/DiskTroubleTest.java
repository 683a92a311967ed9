package org.berrywatt.server.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.berrywatt.server.reading.ReadingBench.READING;

import java.util.UUID;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/**
 * A reading while the database reports trouble with its disk, by the codes of the PostgreSQL manual, appendix A. A trigger stands
 * for the disk; {@code deploy/full-disk.sh} fills a real one.
 */
@ServerTest
class DiskTroubleTest {

    private final UUID id = UUID.randomUUID();
    private final JdbcClient database;
    private final ReadingBench at;
    private final Readings readings;

    @Autowired
    DiskTroubleTest(MockMvcTester server, JsonMapper json, JdbcClient database, Readings readings) {
        this.at = new ReadingBench(server, json);
        this.database = database;
        this.readings = readings;
    }

    @AfterEach
    void mend() {
        database.sql("drop trigger if exists trouble on reading").update();
        database.sql("drop function if exists trouble").update();
    }

    @ParameterizedTest
    @CsvSource({
        "53100, storage.full, room must be made",
        "58030, storage.damaged, go on with the last backup",
        "XX001, storage.damaged, go on with the last backup",
        "57P03, unavailable, sent again by itself"
    })
    void isToBeSentAgainAndIsStoredOnceWhenTheTroubleIsOver(String state, String code, String wayOut) {
        makeTrouble(state);
        var refused = at.team.put(at.light("412"), READING, id);
        assertThat(refused).hasStatus(503);
        assertThat(at.team.problem(refused, code).detail()).contains(wayOut);
        assertThat(at.recorded(readings)).isEmpty();

        mend();
        at.accepted(at.light("412"), id);
        at.accepted(at.light("412"), id);
        assertThat(at.recorded(readings)).hasSize(1);
    }

    private void makeTrouble(String state) {
        database.sql("""
                create function trouble() returns trigger language plpgsql as $$
                begin raise exception 'could not extend file' using errcode = '%s'; end $$""".formatted(state)).update();
        database.sql(
                        "create trigger trouble before insert on reading for each row when (new.id = '%s') execute function trouble()"
                                .formatted(id))
                .update();
    }
}
