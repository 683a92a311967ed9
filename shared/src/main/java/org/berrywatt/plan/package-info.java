/**
 * Planning a lab day: which team builds which recipe, what that will be able to tell, what to prepare and when each cell is
 * where. Pure functions; see docs/science/plan.md.
 */
@NullMarked
package org.berrywatt.plan;

import org.jspecify.annotations.NullMarked;
