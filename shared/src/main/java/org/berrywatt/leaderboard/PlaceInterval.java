package org.berrywatt.leaderboard;

import java.util.Arrays;

/**
 * The places that hold a team in 95 % of the trials, 2.5 % cut off at either end.
 *
 * @param best the first place at which more than 2.5 % of the trials are reached
 * @param worst the first place at which at least 97.5 % are
 */
record PlaceInterval(int best, int worst) {

    /** @param above for every trial how many teams are above, in [0, teams) */
    static PlaceInterval of(short[] above, int teams) {
        int[] trialsAt = trialsAt(above, teams);
        return new PlaceInterval(first(trialsAt, above.length * 25L + 1) + 1, first(trialsAt, above.length * 975L) + 1);
    }

    /** Every other trial is counted apart, since neighbours often fall on one place and would wait for each other. */
    private static int[] trialsAt(short[] above, int teams) {
        int[] even = new int[teams];
        int[] odd = new int[teams];
        for (int trial = 1; trial < above.length; trial += 2) {
            even[above[trial - 1]]++;
            odd[above[trial]]++;
        }
        if (above.length % 2 == 1) {
            even[above[above.length - 1]]++;
        }
        Arrays.setAll(even, place -> even[place] + odd[place]);
        return even;
    }

    /** The first place by which so many thousandths of a trial are reached. */
    private static int first(int[] trialsAt, long thousandths) {
        long reached = 0;
        int place = -1;
        while (reached < thousandths) {
            place++;
            reached += trialsAt[place] * 1000L;
        }
        return place;
    }
}
