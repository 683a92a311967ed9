package org.berrywatt.server.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.berrywatt.server.labday.LabDay;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class RetentionMattersTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 5, 5);

    @Test
    void saysNothingWhileNobodyDecidedAndWhileTheDateIsFar() {
        assertThat(Attention.of(keptUntil(null, false))).isEmpty();
        assertThat(Attention.of(keptUntil(TODAY.plusDays(15), false))).isEmpty();
    }

    @Test
    void remindsTwoWeeksAheadAndOnTheLastDay() {
        assertThat(Attention.of(keptUntil(TODAY.plusDays(14), false)))
                .singleElement()
                .satisfies(matter -> assertThat(matter.kind()).isEqualTo(Kind.KEEP_ENDS))
                .satisfies(matter -> assertThat(matter.values()).containsEntry("days", 14L));
        assertThat(Attention.of(keptUntil(TODAY, false)))
                .singleElement()
                .satisfies(matter -> assertThat(matter.values()).containsEntry("days", 0L));
    }

    @Test
    void remindsOfAPassedDateOnceResultsAreFinalToo() {
        assertThat(Attention.of(keptUntil(TODAY.minusDays(3), true)))
                .singleElement()
                .satisfies(matter -> assertThat(matter.kind()).isEqualTo(Kind.KEEP_OVER))
                .satisfies(matter -> assertThat(matter.values()).containsEntry("days", 3L))
                .satisfies(matter -> assertThat(matter.since()).isEqualTo("2026-05-03T00:00:00Z"));
    }

    private static DeskRecord keptUntil(@Nullable LocalDate last, boolean resultsFinal) {
        var day = new LabDay(
                UUID.randomUUID(),
                "Rehearsal",
                TODAY,
                1000,
                4e-4,
                "medianOfDeclared",
                3,
                true,
                false,
                resultsFinal,
                last,
                1);
        return new DeskRecord(
                day,
                Instant.parse("2026-05-05T12:00:00Z"),
                List.of(),
                Map.of(),
                List.of(),
                List.of(),
                Map.of(),
                Map.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of());
    }
}
