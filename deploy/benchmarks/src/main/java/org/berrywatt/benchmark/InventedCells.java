package org.berrywatt.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.berrywatt.findings.Factor;
import org.berrywatt.findings.Standing;
import org.berrywatt.findings.Study;
import org.berrywatt.findings.Subject;
import org.jspecify.annotations.Nullable;

/**
 * Invented cells of teams of three and days of eight teams, one in five broken, with eight parameters: five sorts of two to
 * eight levels, of which the first doubles the power, and three numbers of twelve to a hundred values.
 */
final class InventedCells {

    private static final int TEAM = 3;
    private static final int DAY = 24;
    private static final int[] SORTS = {2, 3, 4, 6, 8};
    private static final int[] NUMBERS = {12, 12, 100};

    private final SplittableRandom random = new SplittableRandom(1);
    private final List<Subject> subjects = new ArrayList<>();
    private final List<List<@Nullable String>> sorts = empty(SORTS.length);
    private final List<List<@Nullable Double>> numbers = empty(NUMBERS.length);

    private InventedCells(int cells) {
        double team = 0;
        for (int cell = 0; cell < cells; cell++) {
            team = cell % TEAM == 0 ? 0.5 * random.nextGaussian() : team;
            add(cell, team);
        }
    }

    static Study study(int cells) {
        return new InventedCells(cells).study();
    }

    private static <T> List<List<T>> empty(int count) {
        List<List<T>> lists = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            lists.add(new ArrayList<>());
        }
        return lists;
    }

    private void add(int cell, double team) {
        int coat = random.nextInt(SORTS[0]);
        sorts.get(0).add("level " + coat);
        for (int i = 1; i < SORTS.length; i++) {
            sorts.get(i).add("level " + random.nextInt(SORTS[i]));
        }
        for (int i = 0; i < NUMBERS.length; i++) {
            numbers.get(i).add(10.0 * random.nextInt(NUMBERS[i]));
        }
        boolean broke = random.nextInt(5) == 0;
        double power = Math.exp(team + 0.5 * random.nextGaussian() + coat * Math.log(2));
        subjects.add(new Subject(
                "cell " + cell,
                "team " + cell / TEAM,
                "day " + cell / DAY,
                broke ? Standing.FAILED : Standing.COUNTS,
                broke ? null : power));
    }

    private Study study() {
        List<Factor> factors = new ArrayList<>();
        for (int i = 0; i < SORTS.length; i++) {
            factors.add(Factor.ofSorts("sort " + i, sorts.get(i)));
        }
        for (int i = 0; i < NUMBERS.length; i++) {
            factors.add(Factor.ofNumbers("number " + i, numbers.get(i)));
        }
        return new Study(subjects, factors);
    }
}
