package org.berrywatt.findings;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.berrywatt.statistics.Resampling;
import org.jspecify.annotations.Nullable;

/**
 * An invented class day whose truth is known: eight teams of three cells, one in five breaks. Three parameters are drawn from
 * cell to cell within teams (four bakes, three dyes, two coats), three once per team (two oxides, two acids, soak times). Teams
 * differ by a standard deviation of 0.5 in natural logarithms, cells of one team by 0.5.
 *
 * @param coatRatio how many times the performance of the first coat the second has
 * @param shadowed whether the seal always changes together with the coat
 */
record SimulatedDay(long seed, double coatRatio, boolean shadowed) {

    private static final int TEAMS = 8;
    private static final int CELLS = 3;
    private static final int DRAWS = 999;

    StudyFindings findings() {
        return StudyFindings.of(study(), new Resampling(DRAWS, seed, done -> {}));
    }

    private Study study() {
        Random random = new Random(seed * 7919 + 17);
        List<Subject> subjects = new ArrayList<>();
        List<@Nullable Double> bakes = new ArrayList<>();
        List<@Nullable Double> soaks = new ArrayList<>();
        List<List<@Nullable String>> sorts =
                List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        List<Integer> oxides = shuffled(random, 0, 0, 0, 0, 1, 1, 1, 1);
        List<Integer> acids = shuffled(random, 0, 0, 0, 0, 1, 1, 1, 1);
        for (int team = 0; team < TEAMS; team++) {
            double good = 0.5 * random.nextGaussian();
            List<Integer> bake = shuffled(random, 0, 1, 2, 3);
            List<Integer> dye = shuffled(random, 0, 1, 2);
            List<Integer> coat = shuffled(random, 0, 1, random.nextInt(2));
            double soak = 10 + 5 * random.nextInt(5);
            for (int cell = 0; cell < CELLS; cell++) {
                double log = good + 0.5 * random.nextGaussian() + coat.get(cell) * Math.log(coatRatio);
                boolean broke = random.nextInt(5) == 0;
                subjects.add(new Subject(
                        team + "." + cell,
                        "team " + team,
                        "day",
                        broke ? Standing.FAILED : Standing.COUNTS,
                        broke ? null : Math.exp(log)));
                bakes.add(350.0 + 50 * bake.get(cell));
                soaks.add(soak);
                sorts.get(0).add("dye" + dye.get(cell));
                sorts.get(1).add("coat" + coat.get(cell));
                sorts.get(2).add("oxide" + oxides.get(team));
                sorts.get(3).add("acid" + acids.get(team));
                sorts.get(4).add("seal" + coat.get(cell));
            }
        }
        List<Factor> factors = new ArrayList<>(List.of(
                Factor.ofNumbers("bake", bakes),
                Factor.ofSorts("dye", sorts.get(0)),
                Factor.ofSorts("coat", sorts.get(1)),
                Factor.ofSorts("oxide", sorts.get(2)),
                Factor.ofSorts("acid", sorts.get(3)),
                Factor.ofNumbers("soak", soaks)));
        if (shadowed) {
            factors.add(Factor.ofSorts("seal", sorts.get(4)));
        }
        return new Study(subjects, factors);
    }

    private static List<Integer> shuffled(Random random, Integer... numbers) {
        List<Integer> list = new ArrayList<>(List.of(numbers));
        Collections.shuffle(list, random);
        return list;
    }
}
