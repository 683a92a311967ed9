/** Light at the cell: spectra, efficacy, spectral mismatch, and a station's irradiance over time. */
@NullMarked
package org.berrywatt.light;

import org.jspecify.annotations.NullMarked;
