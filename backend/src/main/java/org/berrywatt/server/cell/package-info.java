/** Cells: build sheets and how each stage ended; every correction keeps what it replaces. */
@ApplicationModule(allowedDependencies = {"platform", "access", "typed", "labday", "team", "safety"})
@NullMarked
package org.berrywatt.server.cell;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
