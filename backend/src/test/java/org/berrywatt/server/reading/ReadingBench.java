package org.berrywatt.server.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.Problem;
import org.berrywatt.contract.ReadingAnswer;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.contract.SweepPoint;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.jspecify.annotations.Nullable;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.json.JsonMapper;

/** A team with a cell at a lamp, and what its phone sends of that cell. */
final class ReadingBench {

    static final String READING = "/api/readings/{id}";
    static final Typed MICROAMPS = new Typed("40", "uA");

    final Bench bench;
    final Api team;
    final Api teacher;
    final UUID cell;
    final UUID station;

    ReadingBench(MockMvcTester server, JsonMapper json) {
        bench = new Bench(server, json);
        teacher = bench.teacher;
        team = bench.team("Sloe");
        cell = bench.cell(team, "C1");
        station = bench.station("Lamp");
    }

    MvcTestResult put(ReadingRequest request) {
        return team.put(request, READING, UUID.randomUUID());
    }

    ReadingAnswer accepted(ReadingRequest request) {
        return accepted(request, UUID.randomUUID());
    }

    ReadingAnswer accepted(ReadingRequest request, UUID id) {
        return team.answer(team.put(request, READING, id), ReadingAnswer.class);
    }

    /** The refusal of a reading whose content does not do. */
    Problem refused(ReadingRequest request, String code) {
        var answer = put(request);
        assertThat(answer).hasStatus(422);
        return team.problem(answer, code);
    }

    List<ReadingAnswer> listed(Api caller) {
        return caller.answers(caller.get("/api/cells/{id}/readings", cell), ReadingAnswer.class);
    }

    List<RecordedReading> recorded(Readings readings) {
        return readings.ofLabDay(bench.day.id());
    }

    ReadingRequest light(String millivolt) {
        return light(new Typed(millivolt, "mV"));
    }

    ReadingRequest light(Typed voltage) {
        return Bench.lightRequest(cell, station, voltage, MICROAMPS);
    }

    ReadingRequest correction(UUID replaces, String millivolt) {
        return correcting(light(millivolt), replaces, null);
    }

    /** The rows are what the meter showed, however unusual. */
    ReadingRequest sweep(SweepPoint... rows) {
        return confirmed(asked(rows));
    }

    /** The same before anybody confirmed it. */
    ReadingRequest asked(SweepPoint... rows) {
        return new ReadingRequest(
                cell, "sweep", station, null, null, null, null, List.of(rows), false, null, null, Bench.NOTICED);
    }

    static ReadingRequest confirmed(ReadingRequest asked) {
        return new ReadingRequest(
                asked.cellId(),
                asked.kind(),
                asked.stationId(),
                asked.voltage(),
                asked.current(),
                asked.swappedVoltage(),
                asked.swappedCurrent(),
                asked.points(),
                true,
                asked.replaces(),
                asked.reason(),
                asked.noticedAt());
    }

    static ReadingRequest correcting(ReadingRequest right, UUID replaces, @Nullable String reason) {
        return new ReadingRequest(
                right.cellId(),
                right.kind(),
                right.stationId(),
                right.voltage(),
                right.current(),
                right.swappedVoltage(),
                right.swappedCurrent(),
                right.points(),
                right.unusualConfirmed(),
                replaces,
                reason,
                right.noticedAt());
    }

    static SweepPoint row(@Nullable String kohm, @Nullable String millivolt, @Nullable String microamp) {
        return new SweepPoint(typed(kohm, "kohm"), typed(millivolt, "mV"), typed(microamp, "uA"));
    }

    private static @Nullable Typed typed(@Nullable String text, String unit) {
        return text == null ? null : new Typed(text, unit);
    }
}
