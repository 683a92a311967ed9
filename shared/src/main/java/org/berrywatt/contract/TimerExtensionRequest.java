package org.berrywatt.contract;

/**
 * More time for a timer, counted from its end, or from now when it is over.
 *
 * @param minutes in [1, 60]
 */
public record TimerExtensionRequest(int minutes) {}
