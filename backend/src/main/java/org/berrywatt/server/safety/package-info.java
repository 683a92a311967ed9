/** Safety of the day: who is signed off for which hazard zone until when, and the log of incidents. */
@ApplicationModule(allowedDependencies = {"platform", "access", "typed", "labday", "team"})
@NullMarked
package org.berrywatt.server.safety;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
