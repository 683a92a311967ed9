/** How fast the science is, as ratios measured in one run. Started by {@code deploy/benchmark.sh}, never shipped. */
@NullMarked
package org.berrywatt.benchmark;

import org.jspecify.annotations.NullMarked;
