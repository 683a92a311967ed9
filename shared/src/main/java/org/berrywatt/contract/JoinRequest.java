package org.berrywatt.contract;

/** A code typed or scanned on a phone: either a team's own code or the lab day's. */
public record JoinRequest(String code) {}
