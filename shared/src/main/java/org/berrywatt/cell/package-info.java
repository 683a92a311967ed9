/**
 * The build of a cell: one catalogue of build parameters, the stages and the ways in which each of them fails.
 */
@NullMarked
package org.berrywatt.cell;

import org.jspecify.annotations.NullMarked;
