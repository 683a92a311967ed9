package org.berrywatt.findings;

import java.util.List;
import java.util.Optional;

/**
 * One build parameter against the performance of the cells that work, with the yield of every level beside it.
 *
 * @param parameter key of the parameter
 * @param number whether its levels are numbers
 * @param levels numbers rising, sorts by key; empty when the parameter was recorded for no cell
 * @param tests all tests that the cells could answer
 * @param effect how large the difference is, the smallest one that could have been shown included
 * @param yieldCurve for numbers, the chance to come through
 * @param strength how strongly the working cells speak
 * @param yieldStrength how strongly the levels differ in how many cells come through
 * @param p behind the strength, in (0, 1]; 1 when there is nothing to compare
 * @param holm the same corrected for all parameters looked at
 * @param entries what entered the comparison: cells, or teams when no team tried several levels
 * @param confoundedWith the parameter that hides this one; empty when none does
 * @param notes the yield first, when a cell was made
 */
public record ParameterFinding(
        String parameter,
        boolean number,
        List<Level> levels,
        Tests tests,
        Optional<Effect> effect,
        Optional<YieldCurve> yieldCurve,
        Strength strength,
        Strength yieldStrength,
        double p,
        double holm,
        int entries,
        boolean teamsOnly,
        Optional<String> confoundedWith,
        Sentence sentence,
        List<Sentence> notes) {}
