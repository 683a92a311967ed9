/**
 * The generator of the demo day: an invented class whose truth is known, simulated with the project's own diode model and
 * written to {@code demo-data/}. Not shipped.
 */
@NullMarked
package org.berrywatt.demo;

import org.jspecify.annotations.NullMarked;
