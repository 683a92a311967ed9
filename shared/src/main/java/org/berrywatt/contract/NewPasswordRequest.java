package org.berrywatt.contract;

/**
 * A new password for an account whose own is forgotten.
 *
 * @param key the one-time key that {@code --new-password} printed on the server's own computer
 * @param name of the account
 * @param password the new one, held to the same rules as at set-up
 */
public record NewPasswordRequest(String key, String name, String password) {}
