package org.berrywatt.contract;

/**
 * A change of a plan by hand.
 *
 * @param label the planned cell, for example {@code "A2"}
 * @param parameter what is to be another level
 * @param level which one, from 0 in the order of the plan's settings
 */
public record PlanChangeRequest(String label, String parameter, int level) {}
