/**
 * What a class's cells say about a build parameter: levels with their yield, rank tests, one honest sentence. Pure
 * functions of observations; see docs/science/findings.md.
 */
@NullMarked
package org.berrywatt.findings;

import org.jspecify.annotations.NullMarked;
