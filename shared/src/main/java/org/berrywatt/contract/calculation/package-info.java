/**
 * What travels to the calculator and back: plain numbers in the unit that stands in the name, because nothing here was read
 * off a meter's display. What may be left out is marked nullable, and its documentation says what is taken instead.
 */
@NullMarked
package org.berrywatt.contract.calculation;

import org.jspecify.annotations.NullMarked;
