package org.berrywatt.plan;

import java.util.List;

/**
 * A build parameter that a plan varies.
 *
 * @param key name of the parameter
 * @param levels keys of its levels, distinct, two or more
 */
public record Factor(String key, List<String> levels) {

    int size() {
        return levels.size();
    }
}
