package org.berrywatt.server.platform;

import java.time.Clock;
import java.time.ZoneOffset;
import java.util.UUID;
import java.util.function.Supplier;
import org.berrywatt.contract.ProblemCode;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * Makes a {@code PUT} with an id from the client happen once, however often a weak network repeats it.
 *
 * <p>The receipt is stored in the same transaction as what it stands for; two simultaneous requests meet at the primary
 * key, and the second waits for the first.
 */
@Component
public class Receipts {

    private final JdbcClient database;
    private final Fingerprint fingerprint;
    private final Clock clock;

    Receipts(JdbcClient database, Fingerprint fingerprint, Clock clock) {
        this.database = database;
        this.fingerprint = fingerprint;
        this.clock = clock;
    }

    /**
     * Answers {@code first} when this id is new, {@code again} when the same request came before.
     *
     * @param request the body as received
     * @throws Refusal {@code id.reused} when the id came before with another body
     */
    @Transactional
    public <A> A once(UUID id, Object request, Supplier<A> first, Supplier<A> again) {
        var print = fingerprint.of(request);
        if (insert(id, print)) {
            return first.get();
        }
        if (!print.equals(stored(id))) {
            throw Refusal.of(ProblemCode.ID_REUSED).field("id").value(id);
        }
        return again.get();
    }

    private boolean insert(UUID id, String print) {
        return database.sql("insert into receipt (id, fingerprint, at) values (?, ?, ?) on conflict do nothing")
                        .params(id, print, clock.instant().atOffset(ZoneOffset.UTC))
                        .update()
                == 1;
    }

    private String stored(UUID id) {
        return database.sql("select fingerprint from receipt where id = ?")
                .param(id)
                .query(String.class)
                .single();
    }
}
