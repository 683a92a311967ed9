package org.berrywatt.server.archive;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.regex.Pattern;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.jdbc.core.JdbcOperations;

/** The changes of the database's tables, by number: from nothing to the tables of today. */
final class Migrations {

    private static final String FILES = "classpath*:db/migration/*/V*__*.sql";
    private static final Pattern NUMBER = Pattern.compile("V(\\d+)__.*");

    private final List<Change> changes;

    private record Change(int number, Resource file) {}

    private Migrations(List<Change> changes) {
        this.changes = changes;
    }

    static Migrations load() {
        try {
            var files = new PathMatchingResourcePatternResolver().getResources(FILES);
            return new Migrations(Arrays.stream(files)
                    .map(file -> new Change(number(file), file))
                    .sorted(Comparator.comparingInt(Change::number))
                    .toList());
        } catch (IOException missing) {
            throw new UncheckedIOException("the changes of the database's tables are not on the class path", missing);
        }
    }

    List<Integer> numbers() {
        return changes.stream().map(Change::number).toList();
    }

    /** Makes the tables, in the present schema, as a server knew them that had these changes. */
    void make(Collection<Integer> known, JdbcOperations store) {
        apply(known::contains, store);
    }

    /** Brings those tables to today. */
    void makeTheRest(Collection<Integer> known, JdbcOperations store) {
        apply(number -> !known.contains(number), store);
    }

    private void apply(IntPredicate wanted, JdbcOperations store) {
        changes.stream()
                .filter(change -> wanted.test(change.number()))
                .forEach(change -> store.execute(text(change.file())));
    }

    private static int number(Resource file) {
        var name = NUMBER.matcher(requireNonNull(file.getFilename()));
        if (!name.matches()) {
            throw new IllegalStateException("a change of the tables without a number: " + file);
        }
        return Integer.parseInt(name.group(1));
    }

    private static String text(Resource file) {
        try {
            return file.getContentAsString(StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("a change of the tables cannot be read: " + file, unreadable);
        }
    }
}
