/** What people type: numbers with units, areas, names. Read once here, or refused with a sentence. */
@ApplicationModule(allowedDependencies = {"platform"})
@NullMarked
package org.berrywatt.server.typed;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
