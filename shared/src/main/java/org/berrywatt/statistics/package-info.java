/** Ranks, rank tests and quantiles of small samples; a question that the data cannot answer gets a reason, never NaN. */
@NullMarked
package org.berrywatt.statistics;

import org.jspecify.annotations.NullMarked;
