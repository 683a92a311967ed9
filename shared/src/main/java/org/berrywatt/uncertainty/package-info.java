/**
 * Measurement uncertainty after JCGM 100:2008 (GUM): inputs with a distribution, the first-order law, and the budget that
 * shows each input's part.
 */
@NullMarked
package org.berrywatt.uncertainty;

import org.jspecify.annotations.NullMarked;
