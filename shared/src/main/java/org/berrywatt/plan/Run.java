package org.berrywatt.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * One cell of a design.
 *
 * @param block the team that builds it, from 0
 * @param levels which level of each factor it gets, from 0, in the order of the factors
 */
public record Run(int block, List<Integer> levels) {

    Run with(int factor, int level) {
        var changed = new ArrayList<>(levels);
        changed.set(factor, level);
        return new Run(block, List.copyOf(changed));
    }
}
