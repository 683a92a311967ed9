package org.berrywatt.server.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;

/**
 * Something that cells can be filtered by.
 *
 * @param of what a cell has; the empty key where it has nothing
 */
record Facet(String key, Function<StudyRow, Group> of) {

    static final String LEVEL = "level.";

    /** All of a table with these columns. */
    static List<Facet> of(List<Column> columns) {
        List<Facet> facets = new ArrayList<>(List.of(
                new Facet("day", StudyRow::day),
                new Facet("team", StudyRow::team),
                new Facet("station", StudyRow::station),
                new Facet("stage", row -> plain(row.stage())),
                new Facet("standing", row -> plain(standing(row)))));
        for (int i = 0; i < columns.size(); i++) {
            int column = i;
            facets.add(new Facet(
                    LEVEL + columns.get(i).key(),
                    row -> plain(Objects.requireNonNullElse(row.levels().get(column), ""))));
        }
        return facets;
    }

    static String standing(StudyRow row) {
        return row.standing().name().toLowerCase(Locale.ROOT);
    }

    private static Group plain(String key) {
        return new Group(key, key);
    }
}
