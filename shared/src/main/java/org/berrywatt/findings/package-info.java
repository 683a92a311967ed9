/**
 * What the cells of lab days say about their build parameters: levels with their yield, tests within teams, a joint model, what
 * is confounded, one honest sentence each. Pure functions of a study; see docs/science/findings.md.
 */
@NullMarked
package org.berrywatt.findings;

import org.jspecify.annotations.NullMarked;
