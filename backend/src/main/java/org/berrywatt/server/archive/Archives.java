package org.berrywatt.server.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.ArchiveAnswer;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.labday.JoinCodes;
import org.berrywatt.server.labday.LabDay;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.leaderboard.Leaderboards;
import org.berrywatt.server.platform.Refusal;
import org.springframework.dao.NonTransientDataAccessException;
import org.springframework.dao.NonTransientDataAccessResourceException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;
import tools.jackson.databind.json.JsonMapper;

/** Lab days that leave as one file and come in as one. */
@Service
class Archives {

    /** One day comes in at a time; any number that no other lock of the database carries. */
    private static final long ONE_AT_A_TIME = 7_015_523;

    private final LabDays days;
    private final Leaderboards leaderboards;
    private final JoinCodes codes;
    private final JdbcTemplate store;
    private final TransactionTemplate transaction;
    private final JsonMapper json;
    private final Migrations migrations = Migrations.load();

    Archives(
            LabDays days,
            Leaderboards leaderboards,
            JoinCodes codes,
            JdbcTemplate store,
            TransactionTemplate transaction,
            JsonMapper json) {
        this.days = days;
        this.leaderboards = leaderboards;
        this.codes = codes;
        this.store = store;
        this.transaction = transaction;
        this.json = json;
    }

    /**
     * Writes a day as it stands at one moment. Join codes and passes stay here, so that the file opens nothing.
     *
     * @throws Refusal {@code notFound}
     */
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public void write(LabDay day, Instant at, Path file) throws IOException {
        var blank = new Manifest(
                Manifest.FORMAT,
                at,
                day.id(),
                day.title(),
                day.date(),
                migrations.numbers(),
                results(day.id()),
                List.of());
        new ArchiveWriter(JdbcClient.create(store), json).write(blank, file);
    }

    /** @throws Refusal {@code notFound} */
    LabDay day(UUID id) {
        return days.find(id).orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
    }

    /**
     * Takes a day in, whole or not at all.
     *
     * @param check whether to go the whole way and then leave everything as it was
     * @throws Refusal {@code archive.unreadable}, {@code archive.altered}, {@code archive.tooLarge}, {@code archive.newer}
     *     from a server that knows more tables than this one, {@code labday.exists}
     */
    ArchiveAnswer take(Path file, boolean check) throws IOException {
        try (var archive = ArchiveFile.open(file, json)) {
            requireKnown(archive.manifest());
            boolean same = Boolean.TRUE.equals(transaction.execute(status -> {
                if (check) {
                    status.setRollbackOnly();
                }
                return arrives(archive);
            }));
            return answer(archive.manifest(), same, check);
        }
    }

    /** @return whether the same results came out */
    private boolean arrives(ArchiveFile archive) {
        store.query("select pg_advisory_xact_lock(?)", row -> {}, ONE_AT_A_TIME);
        Manifest manifest = archive.manifest();
        requireAbsent(manifest.labDayId());
        try {
            new Arrival(store, migrations, json, codes::reserve).take(archive);
            return results(manifest.labDayId()).equals(manifest.results());
        } catch (NonTransientDataAccessResourceException databaseAway) {
            throw databaseAway;
        } catch (NonTransientDataAccessException contradiction) {
            throw ArchiveFile.altered(Manifest.ENTRY);
        } catch (IOException unreadable) {
            throw Refusal.of(ProblemCode.ARCHIVE_UNREADABLE);
        }
    }

    private void requireKnown(Manifest manifest) {
        if (!migrations.numbers().containsAll(manifest.schema())) {
            throw Refusal.of(ProblemCode.ARCHIVE_NEWER).value(manifest.madeAt());
        }
    }

    private void requireAbsent(UUID labDayId) {
        days.find(labDayId).ifPresent(day -> {
            throw Refusal.of(ProblemCode.LABDAY_EXISTS).value(day.title());
        });
    }

    private String results(UUID labDayId) {
        return Checksum.of(json.writeValueAsBytes(leaderboards.of(labDayId)));
    }

    private ArchiveAnswer answer(Manifest manifest, boolean sameResults, boolean check) {
        return new ArchiveAnswer(
                manifest.labDayId(),
                manifest.title(),
                manifest.heldOn(),
                manifest.madeAt(),
                manifest.rowsOf("team"),
                manifest.rowsOf("cell"),
                manifest.rowsOf("reading"),
                migrations.numbers().size() - manifest.schema().size(),
                sameResults,
                !check);
    }
}
