package org.berrywatt.contract;

import org.jspecify.annotations.Nullable;

/**
 * The spectrum of a station's own lamp.
 *
 * @param name where it comes from, 1 to 60 characters
 * @param csv rows of wavelength in nm and relative power per nm, at most 40 000 characters; null takes the spectrum back
 */
public record SpectrumRequest(String name, @Nullable String csv) {}
