/** Lab days: reference conditions, rule, join code, open or closed for entries. */
@ApplicationModule(allowedDependencies = {"platform", "access", "typed"})
@NullMarked
package org.berrywatt.server.labday;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
