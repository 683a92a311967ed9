package org.berrywatt.server.findings;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.berrywatt.contract.FindingsTableRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;

/** What a table's columns are for; all others are build parameters. */
record Roles(
        @Nullable String outcome,
        @Nullable String label,
        @Nullable String team,
        @Nullable String day) {

    /** @throws Refusal {@code choice.unknown} for a column that is not there */
    static Roles of(FindingsTableRequest request, List<String> names) {
        var roles = new Roles(request.outcome(), request.label(), request.team(), request.day());
        Stream.of(roles.outcome, roles.label, roles.team, roles.day)
                .filter(Objects::nonNull)
                .filter(name -> !names.contains(name))
                .findFirst()
                .ifPresent(name -> refuse(name, names));
        return roles;
    }

    private static void refuse(String name, List<String> names) {
        throw Refusal.of(ProblemCode.CHOICE_UNKNOWN)
                .field("columns")
                .value(Words.excerpt(name))
                .limit(Words.excerpt(String.join(", ", names)));
    }

    String use(String column) {
        if (column.equals(outcome)) {
            return "outcome";
        }
        if (column.equals(label)) {
            return "label";
        }
        if (column.equals(team)) {
            return "team";
        }
        return column.equals(day) ? "day" : "parameter";
    }
}
