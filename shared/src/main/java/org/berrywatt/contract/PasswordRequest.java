package org.berrywatt.contract;

/**
 * A new password for the teacher who is signed in.
 *
 * @param present the one until now
 * @param password the new one, held to the same rules as at set-up
 */
public record PasswordRequest(String present, String password) {}
