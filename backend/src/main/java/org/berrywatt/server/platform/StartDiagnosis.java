package org.berrywatt.server.platform;

import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.berrywatt.contract.ProblemCode;
import org.flywaydb.core.api.exception.FlywayValidateException;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.web.server.PortInUseException;

/** Finds in a failed start the reason that its reader can do something about. */
final class StartDiagnosis {

    private StartDiagnosis() {}

    static StartProblem of(Throwable failure) {
        var causes = causes(failure);
        return causes.stream()
                .map(StartDiagnosis::known)
                .flatMap(Optional::stream)
                .findFirst()
                .orElseGet(() -> unknown(causes.get(causes.size() - 1)));
    }

    private static Optional<StartProblem> known(Throwable cause) {
        if (cause instanceof StartProblem problem) {
            return Optional.of(problem);
        }
        if (cause instanceof PortInUseException busy) {
            return problem("portBusy", Map.of("port", busy.getPort(), "other", busy.getPort() + 1));
        }
        if (cause instanceof FlywayValidateException) {
            return problem("dataFromAnotherVersion", Map.of());
        }
        return cause instanceof SQLException sql ? database(sql) : Optional.empty();
    }

    /** Classes and codes of SQLSTATE: ISO/IEC 9075-2 and the PostgreSQL manual, appendix A. */
    private static Optional<StartProblem> database(SQLException cause) {
        var failure = DatabaseFailure.of(cause).orElse(ProblemCode.INTERNAL);
        if (failure == ProblemCode.STORAGE_FULL || failure == ProblemCode.STORAGE_DAMAGED) {
            var full = failure == ProblemCode.STORAGE_FULL;
            return problem(full ? "storageFull" : "storageDamaged", Map.of("reason", message(cause)));
        }
        var state = Objects.toString(cause.getSQLState(), "");
        if (state.startsWith("08")) {
            return problem("databaseAway", Map.of("reason", message(cause)));
        }
        return state.startsWith("28") || state.equals("3D000")
                ? problem("databaseRefuses", Map.of("reason", message(cause)))
                : Optional.empty();
    }

    private static StartProblem unknown(Throwable root) {
        return new StartProblem("unknown", Map.of("reason", message(root)));
    }

    private static Optional<StartProblem> problem(String reason, Map<String, Object> values) {
        return Optional.of(new StartProblem(reason, values));
    }

    /** One line, whatever was thrown. */
    private static String message(Throwable cause) {
        var text = Objects.toString(cause.getMessage(), "");
        return (text.isBlank() ? cause.getClass().getSimpleName() : text)
                .lines()
                .findFirst()
                .orElse("")
                .strip();
    }

    private static List<Throwable> causes(Throwable failure) {
        return Stream.<@Nullable Throwable>iterate(failure, Objects::nonNull, Throwable::getCause)
                .map(Objects::requireNonNull)
                .toList();
    }
}
