package org.berrywatt.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * Which team builds which recipes: a design in blocks.
 *
 * @param factors what is varied, one or more
 * @param runs the cells, one or more
 */
public record Design(List<Factor> factors, List<Run> runs) {

    /** The same design with one cell changed by hand. */
    public Design with(int run, int factor, int level) {
        var changed = new ArrayList<>(runs);
        changed.set(run, runs.get(run).with(factor, level));
        return new Design(factors, List.copyOf(changed));
    }

    /** Number of teams that build a cell. */
    public int blocks() {
        return (int) runs.stream().mapToInt(Run::block).distinct().count();
    }

    /** Number of differences between levels that are to be told. */
    public int parameters() {
        return factors.stream().mapToInt(factor -> factor.size() - 1).sum();
    }

    /** Cells beyond those that teams and differences use up; they alone tell chance. Negative when there are too few. */
    public int spareCells() {
        return runs.size() - blocks() - parameters();
    }
}
