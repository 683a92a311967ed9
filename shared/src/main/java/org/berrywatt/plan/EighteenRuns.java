package org.berrywatt.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/**
 * The orthogonal array L18 (2¹ 3⁷) as one more start of a search: eighteen cells that tell up to fifteen differences leave so little
 * room that random starts only come near. Source: G. Taguchi, System of Experimental Design (1987), from memory; a test holds it
 * against its published property, that every two columns are balanced.
 */
final class EighteenRuns {

    private static final List<String> ROWS = List.of(
            "00000000",
            "00111111",
            "00222222",
            "01001122",
            "01112200",
            "01220011",
            "02010212",
            "02121020",
            "02202101",
            "10022110",
            "10100221",
            "10211002",
            "11012021",
            "11120102",
            "11201210",
            "12021201",
            "12102012",
            "12210120");

    private static final int THREES = 7;

    private EighteenRuns() {}

    /** The array's columns that have as many levels as the factors, dealt to the blocks in order; empty where it does not fit. */
    static Optional<List<Run>> in(List<Factor> factors, List<Integer> blockSizes, List<List<Integer>> recipes) {
        int cells = blockSizes.stream().mapToInt(size -> size).sum();
        long twos = factors.stream().filter(factor -> factor.size() == 2).count();
        long threes = factors.stream().filter(factor -> factor.size() == 3).count();
        if (cells != ROWS.size() || twos > 1 || threes > THREES || twos + threes < factors.size()) {
            return Optional.empty();
        }
        var runs = new ArrayList<Run>();
        for (int block = 0; block < blockSizes.size(); block++) {
            for (int i = 0; i < blockSizes.get(block); i++) {
                runs.add(new Run(block, levels(ROWS.get(runs.size()), factors)));
            }
        }
        var allowed = new HashSet<>(recipes);
        return runs.stream().allMatch(run -> allowed.contains(run.levels())) ? Optional.of(runs) : Optional.empty();
    }

    private static List<Integer> levels(String row, List<Factor> factors) {
        var levels = new ArrayList<Integer>();
        int three = 0;
        for (var factor : factors) {
            levels.add(Character.digit(row.charAt(factor.size() == 2 ? 0 : ++three), 10));
        }
        return List.copyOf(levels);
    }
}
