package org.berrywatt.contract;

/**
 * Puts something off that waits for the teacher.
 *
 * @param item id of the item
 * @param minutes in [0, 1440]; 0 brings it back at once
 */
public record PutOffRequest(String item, int minutes) {}
