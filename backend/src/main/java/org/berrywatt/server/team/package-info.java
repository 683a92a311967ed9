/** Teams of a lab day, and how a phone joins one. */
@ApplicationModule(allowedDependencies = {"platform", "access", "typed", "labday"})
@NullMarked
package org.berrywatt.server.team;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
