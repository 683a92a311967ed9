/** What every feature stands on: refusals, texts, receipts, the database, the clock. */
@NullMarked
@ApplicationModule(allowedDependencies = {})
package org.berrywatt.server.platform;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
