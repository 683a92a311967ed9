/** The invented lab day of {@code --demo}: entered through the same doors as a person's entries. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {"platform", "access", "labday", "team", "safety", "cell", "light", "reading", "plan"})
package org.berrywatt.server.demo;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
