package org.berrywatt.contract;

/** A teacher's sign-in. */
public record SignInRequest(String name, String password) {}
