/** Who is calling: the first teacher, signing in and out, passes of teachers and teams. */
@NullMarked
@ApplicationModule(allowedDependencies = "platform")
package org.berrywatt.server.access;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
