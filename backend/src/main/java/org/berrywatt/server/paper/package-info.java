/** What a class wrote on paper while the network was down, typed into tables and brought in as the teacher's entries. */
@NullMarked
@ApplicationModule(allowedDependencies = {"platform", "access", "typed", "labday", "team", "cell", "light", "reading"})
package org.berrywatt.server.paper;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
