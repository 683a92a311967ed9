package org.berrywatt.contract;

import java.util.List;

/**
 * What a team's phone still holds.
 *
 * @param waiting entries that are not with the server yet, in [0, 9999]
 * @param refusedCodes the problem code of each entry that the server refused, at most 20
 */
public record PhoneRequest(int waiting, List<String> refusedCodes) {}
