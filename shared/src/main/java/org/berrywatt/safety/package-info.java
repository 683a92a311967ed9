/**
 * What can hurt somebody who builds a cell: zones of the room, hazards with their usual GHS codes, and which stage and
 * recipe bring which. A reminder, never a verdict: the school's own risk assessment, local rules and the supplier's safety
 * data sheet decide.
 */
@NullMarked
package org.berrywatt.safety;

import org.jspecify.annotations.NullMarked;
