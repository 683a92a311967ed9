package org.berrywatt.server.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.berrywatt.contract.JoinRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@ServerTest
class ReceiptsTest {

    private static final JoinRequest REQUEST = new JoinRequest("maple");
    private final UUID id = UUID.randomUUID();
    private final Receipts receipts;

    @Autowired
    ReceiptsTest(Receipts receipts) {
        this.receipts = receipts;
    }

    @Test
    void actsOnceAndAnswersAgainWhenTheSameRequestComesTwice() {
        assertThat(once(REQUEST)).isEqualTo("first");
        assertThat(once(REQUEST)).isEqualTo("again");
    }

    @Test
    void refusesAnotherBodyUnderTheSameId() {
        once(REQUEST);
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> once(new JoinRequest("birch")))
                .extracting(Refusal::code)
                .isEqualTo(ProblemCode.ID_REUSED);
    }

    @Test
    void forgetsTheIdWhenTheActItselfFails() {
        assertThatExceptionOfType(IllegalStateException.class)
                .isThrownBy(() -> receipts.once(id, REQUEST, this::fail, () -> "again"));
        assertThat(once(REQUEST)).isEqualTo("first");
    }

    @Test
    void actsOnceWhenManyPhonesSendTheSameAtTheSameMoment() {
        var acts = new AtomicInteger();
        var start = new CountDownLatch(1);
        var answers = Stream.generate(() -> CompletableFuture.supplyAsync(() -> {
                    await(start);
                    return receipts.once(id, REQUEST, acts::incrementAndGet, () -> -1);
                }))
                .limit(8)
                .toList();
        start.countDown();
        assertThat(answers.stream().map(CompletableFuture::join))
                .containsOnlyOnce(1)
                .hasSize(8);
        assertThat(acts).hasValue(1);
    }

    private String once(JoinRequest request) {
        return receipts.once(id, request, () -> "first", () -> "again");
    }

    private String fail() {
        throw new IllegalStateException("the act fails");
    }

    private static void await(CountDownLatch start) {
        try {
            start.await();
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        }
    }
}
