package org.berrywatt.contract;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An end to a teacher's sign-in in another browser.
 *
 * @param present the teacher's password
 * @param browser the one to end it in, null for all others
 */
public record SignOutRequest(String present, @Nullable UUID browser) {}
