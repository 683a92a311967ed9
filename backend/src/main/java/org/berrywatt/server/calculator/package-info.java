/** The calculator: the science over HTTP for whoever asks, without a pass and without a trace. */
@NullMarked
@ApplicationModule(allowedDependencies = {"platform", "typed", "worked", "findings"})
package org.berrywatt.server.calculator;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
