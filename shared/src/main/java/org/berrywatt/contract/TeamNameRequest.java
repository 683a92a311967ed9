package org.berrywatt.contract;

/**
 * Another name for a team.
 *
 * @param name team name or initials, 1 to 24 characters; no personal data
 */
public record TeamNameRequest(String name) {}
