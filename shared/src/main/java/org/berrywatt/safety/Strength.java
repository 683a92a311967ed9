package org.berrywatt.safety;

import java.util.List;

/**
 * How a solution is labelled from a strength on.
 *
 * @param fromMassPercent weakest solution that is labelled so, in (0, 100]
 * @param fromMolPerL the same in mol/L
 * @param codes GHS codes of the label
 */
public record Strength(double fromMassPercent, double fromMolPerL, List<String> codes) {}
