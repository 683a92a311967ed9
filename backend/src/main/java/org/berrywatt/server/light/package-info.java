/** Light stations, the readings of their light, and the control cell that is read at each of them. */
@ApplicationModule(allowedDependencies = {"platform", "access", "typed", "labday", "cell"})
@NullMarked
package org.berrywatt.server.light;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
