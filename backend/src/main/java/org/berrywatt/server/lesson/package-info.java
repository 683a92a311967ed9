/** The course of the lesson: announcements, timers, who is on which heater, and the phones' presence. */
@ApplicationModule(allowedDependencies = {"platform", "access", "typed", "labday", "team", "safety", "cell"})
@NullMarked
package org.berrywatt.server.lesson;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
