package org.berrywatt.contract;

import java.util.UUID;

/**
 * A new join code for a team whose phone or code was lost; the old code opens nothing any more.
 *
 * @param endPasses whether the phones that joined before are signed out, too
 */
public record TeamCodeRequest(UUID teamId, boolean endPasses) {}
