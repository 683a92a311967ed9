/** The classroom server: flat feature packages over the science in {@code shared}. */
@NullMarked
package org.berrywatt.server;

import org.jspecify.annotations.NullMarked;
