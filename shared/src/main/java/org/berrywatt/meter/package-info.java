/**
 * What a cheap multimeter does to a number: its accuracy statement, the burden of its current ranges and the load of its
 * voltage ranges.
 */
@NullMarked
package org.berrywatt.meter;

import org.jspecify.annotations.NullMarked;
