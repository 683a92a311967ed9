package org.berrywatt.findings;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Observations of a class, built up cell by cell. */
final class SchoolClass {

    private final List<Observation> cells = new ArrayList<>();

    static SchoolClass empty() {
        return new SchoolClass();
    }

    /** Working cells at a level, one power each, of teams named like the first, second ... letter. */
    SchoolClass sorts(String level, String teams, double... powersWm2) {
        for (int i = 0; i < powersWm2.length; i++) {
            cells.add(new Observation(teams.substring(i, i + 1), level, null, Standing.COUNTS, powersWm2[i]));
        }
        return this;
    }

    SchoolClass number(double number, String team, double powerWm2) {
        cells.add(new Observation(team, String.valueOf(number), number, Standing.COUNTS, powerWm2));
        return this;
    }

    SchoolClass failed(@Nullable String level, int count) {
        return without(Standing.FAILED, level, count);
    }

    SchoolClass waiting(@Nullable String level, int count) {
        return without(Standing.WAITING, level, count);
    }

    private SchoolClass without(Standing standing, @Nullable String level, int count) {
        for (int i = 0; i < count; i++) {
            cells.add(new Observation("z", level, null, standing, null));
        }
        return this;
    }

    List<Observation> cells() {
        return List.copyOf(cells);
    }
}
