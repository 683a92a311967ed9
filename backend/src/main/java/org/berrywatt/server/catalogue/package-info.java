/** What every form needs to know, taken from the science in one answer. */
@ApplicationModule(allowedDependencies = {"platform"})
@NullMarked
package org.berrywatt.server.catalogue;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
