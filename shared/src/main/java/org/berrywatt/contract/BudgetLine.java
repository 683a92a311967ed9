package org.berrywatt.contract;

/**
 * One line of an uncertainty budget.
 *
 * @param input text key of the input
 * @param unit unit of value and standard uncertainty
 * @param sensitivity change of the result per unit of the input, in SI
 * @param share part of the result's variance, in [0, 1]
 */
public record BudgetLine(
        String input,
        double value,
        String unit,
        double standardUncertainty,
        String distribution,
        double sensitivity,
        double share) {}
