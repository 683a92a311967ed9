package org.berrywatt.server.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import java.util.List;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.berrywatt.contract.FindingsTableRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class RunsTest {

    private final Runs runs = new Runs();
    private final CountDownLatch busy = new CountDownLatch(1);

    @AfterEach
    void letGo() {
        busy.countDown();
        runs.destroy();
    }

    @Test
    void saysHowFarItHasComeAndThenAll() {
        var run = runs.start(RunsTest::question);

        await().until(() -> run.progress().state().equals("done"));
        assertThat(run.progress().answer()).isEqualTo("full");
        assertThat(run.progress().steps()).isEqualTo(run.progress().of()).isEqualTo(2);
        // the difference between two levels and the interval of a median are drawn
        assertThat(run.progress().draws()).isPositive();
        assertThat(runs.answer(run.id()).all()).isEqualTo(40);
    }

    @Test
    void endsWhenNobodyWantsItAnyMore() {
        var run = runs.start(this::questionAfterAWhile);
        run.end();
        busy.countDown();

        await().until(() -> run.progress().state().equals("ended"));
        assertThat(run.progress().answer()).isEqualTo("none");
    }

    @Test
    void refusesToLetTooManyWait() {
        IntStream.range(0, 5).forEach(i -> runs.start(this::questionAfterAWhile));

        assertThatThrownBy(() -> {
                    runs.start(RunsTest::question);
                    runs.start(RunsTest::question);
                })
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo(ProblemCode.FINDINGS_BUSY));
    }

    @Test
    void tellsWhyItFailed() {
        var run = runs.start(() -> {
            throw Refusal.of(ProblemCode.NOT_FOUND);
        });

        await().until(() -> run.progress().state().equals("failed"));
        assertThat(run.progress().problem()).isEqualTo("notFound");
    }

    @Test
    void knowsNothingOfALookThatNobodyStarted() {
        assertThatThrownBy(() -> runs.find(UUID.randomUUID()))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo(ProblemCode.FINDINGS_GONE));
    }

    private FindingsAnswers questionAfterAWhile() {
        try {
            busy.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return question();
    }

    /** Forty cells of two dyes, too many deals to count them one by one. */
    private static FindingsAnswers question() {
        var csv = IntStream.range(0, 40)
                .mapToObj(i -> (i % 2 == 0 ? "hibiscus," : "blackberry,") + (10 + i * 7 % 13))
                .collect(Collectors.joining("\n", "dye,power\n", "\n"));
        var table = new CsvTable(new FindingsTableRequest(csv, "power", null, null, null, null));
        return new FindingsAnswers(Measure.OUTCOME, "power", table.study(), Filter.none(), List.of());
    }
}
