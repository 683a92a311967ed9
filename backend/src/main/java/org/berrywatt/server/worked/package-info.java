/** A result with its calculation as it travels: the same for a cell of a day and for a number of the calculator. */
@NullMarked
@ApplicationModule(allowedDependencies = {})
package org.berrywatt.server.worked;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
