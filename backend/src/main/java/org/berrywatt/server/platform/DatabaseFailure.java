package org.berrywatt.server.platform;

import java.sql.SQLException;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.berrywatt.contract.ProblemCode;
import org.jspecify.annotations.Nullable;

/** What the database says of itself when it fails a request; codes of the PostgreSQL manual, appendix A. */
final class DatabaseFailure {

    private static final String DISK_FULL = "53100";

    /** I/O error, undefined file, data corrupted, index corrupted. */
    private static final Set<String> DAMAGED = Set.of("58030", "58P01", "XX001", "XX002");

    /** Connection exception, insufficient resources, operator intervention; without a code, the pool lost a connection. */
    private static final Pattern AWAY = Pattern.compile("|(08|53|57).*");

    private DatabaseFailure() {}

    /** The code of a failure that is neither the request's fault nor the server's. */
    static Optional<ProblemCode> of(Throwable failure) {
        return Stream.<@Nullable Throwable>iterate(failure, Objects::nonNull, Throwable::getCause)
                .filter(SQLException.class::isInstance)
                .map(cause -> Objects.toString(((SQLException) cause).getSQLState(), ""))
                .flatMap(state -> code(state).stream())
                .findFirst();
    }

    private static Optional<ProblemCode> code(String state) {
        if (state.equals(DISK_FULL)) {
            return Optional.of(ProblemCode.STORAGE_FULL);
        }
        if (DAMAGED.contains(state)) {
            return Optional.of(ProblemCode.STORAGE_DAMAGED);
        }
        return AWAY.matcher(state).matches() ? Optional.of(ProblemCode.UNAVAILABLE) : Optional.empty();
    }
}
