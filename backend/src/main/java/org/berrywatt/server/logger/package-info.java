/** Small devices that send readings over HTTP: a token of their own for each, and one door for all of them. */
@NullMarked
@ApplicationModule(allowedDependencies = {"platform", "access", "typed", "labday", "team", "cell", "light", "reading"})
package org.berrywatt.server.logger;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
