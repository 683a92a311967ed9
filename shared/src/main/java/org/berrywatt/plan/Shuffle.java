package org.berrywatt.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;

/** Draws an order by chance. */
final class Shuffle {

    private Shuffle() {}

    /** The same elements; every order is equally likely (R. Durstenfeld, Communications of the ACM 7 (1964) 420). */
    static <T> List<T> of(List<T> elements, UniformRandomProvider random) {
        var shuffled = new ArrayList<>(elements);
        for (int last = shuffled.size() - 1; last > 0; last--) {
            Collections.swap(shuffled, last, random.nextInt(last + 1));
        }
        return shuffled;
    }
}
