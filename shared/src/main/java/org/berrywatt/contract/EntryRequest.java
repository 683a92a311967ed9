package org.berrywatt.contract;

/** Opens or closes a lab day for entries. */
public record EntryRequest(boolean open) {}
