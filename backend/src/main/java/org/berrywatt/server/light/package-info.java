/** Light stations and the readings of their light. */
@ApplicationModule(allowedDependencies = {"platform", "access", "typed", "labday"})
@NullMarked
package org.berrywatt.server.light;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
