package org.berrywatt.contract;

/**
 * The first teacher of a server.
 *
 * @param key the one-time key printed on the server's console
 */
public record SetupRequest(String key, String name, String password) {}
