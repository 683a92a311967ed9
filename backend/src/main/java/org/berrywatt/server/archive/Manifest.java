package org.berrywatt.server.archive;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * What an archive says of itself, in its entry {@code manifest.json}.
 *
 * @param format {@link #FORMAT}
 * @param schema numbers of the changes of the database's tables that its server knew
 * @param results SHA-256 of the leaderboard, so that a reader knows whether the same results came out
 * @param tables in the order in which they can be read
 */
record Manifest(
        String format,
        Instant madeAt,
        UUID labDayId,
        String title,
        LocalDate heldOn,
        List<Integer> schema,
        String results,
        List<Part> tables) {

    static final String FORMAT = "berrywatt-lab-day-1";
    static final String ENTRY = "manifest.json";

    Manifest {
        Stream.of(format, madeAt, labDayId, title, heldOn, results).forEach(Objects::requireNonNull);
        schema = List.copyOf(schema);
        tables = List.copyOf(tables);
    }

    /**
     * The rows of one table, in the entry {@code rows/NAME.jsonl}.
     *
     * @param sha256 of the entry's bytes, in hexadecimal digits
     */
    record Part(String table, long rows, String sha256) {

        Part {
            Objects.requireNonNull(table);
            Objects.requireNonNull(sha256);
        }

        String entry() {
            return entry(table);
        }

        static String entry(String table) {
            return "rows/" + table + ".jsonl";
        }
    }

    Manifest with(List<Part> written) {
        return new Manifest(format, madeAt, labDayId, title, heldOn, schema, results, written);
    }

    /** How many rows there are of a table. */
    long rowsOf(String table) {
        return tables.stream()
                .filter(part -> part.table().equals(table))
                .mapToLong(Part::rows)
                .sum();
    }
}
