package org.berrywatt.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SimpsonTest {

    @Test
    void findsThatTheBetterTreatmentLooksWorseOverAll() {
        // C. R. Charig and others, British Medical Journal 292 (1986) 879-882: kidney stones, open surgery 81/87 small
        // and
        // 192/263 large, puncture 234/270 and 55/80 (from memory). Scores of 10 for success make the factor 1.2 plain
        List<double[]> patients = new ArrayList<>();
        add(patients, 81, 87, 0, 0);
        add(patients, 192, 263, 0, 1);
        add(patients, 234, 270, 1, 0);
        add(patients, 55, 80, 1, 1);
        double[] values = patients.stream().mapToDouble(row -> row[0]).toArray();
        boolean[] puncture = new boolean[values.length];
        int[] size = new int[values.length];
        for (int i = 0; i < values.length; i++) {
            puncture[i] = patients.get(i)[1] == 1;
            size[i] = (int) patients.get(i)[2];
        }
        // within sizes: (234/270 - 81/87) and (55/80 - 192/263), weighted 87*270/357 and 263*80/343, times 10: worked
        // by hand
        double small = 87.0 * 270 / 357;
        double large = 263.0 * 80 / 343;
        double inside = 10 * (small * (234 / 270.0 - 81 / 87.0) + large * (55 / 80.0 - 192 / 263.0)) / (small + large);
        assertThat(Simpson.turned(values, puncture, size).orElseThrow()).isCloseTo(inside, within(1e-9));
    }

    private static void add(List<double[]> patients, int well, int all, int treatment, int size) {
        for (int i = 0; i < all; i++) {
            patients.add(new double[] {i < well ? 10 : 0, treatment, size});
        }
    }

    @Test
    void staysSilentWhereBothAgree() {
        double[] values = {1, 2, 3, 4};
        boolean[] second = {false, true, false, true};
        assertThat(Simpson.turned(values, second, new int[] {0, 0, 1, 1})).isEmpty();
        assertThat(Simpson.turned(values, second, new int[] {0, 1, 2, 3})).isEmpty();
        assertThat(Simpson.turned(new double[0], new boolean[0], new int[0])).isEmpty();
    }
}
