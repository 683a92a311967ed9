package org.berrywatt.plan;

/**
 * What a planned cell asks of heaters, dye baths and stations.
 *
 * @param label name of the cell
 * @param team number of its team, from 1; 0 is the class's own cell
 * @param bakeC film temperature, in °C
 * @param holdMin time at that temperature, in minutes, in [0, infinity)
 * @param soakMin time in the dye, in minutes, in [0, infinity); 0 for a cell without dye
 */
public record Job(String label, int team, double bakeC, double holdMin, double soakMin) {}
