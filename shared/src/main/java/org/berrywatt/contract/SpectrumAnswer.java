package org.berrywatt.contract;

import java.time.Instant;
import java.util.List;

/**
 * The spectrum of a station's own lamp, or its taking back.
 *
 * @param name where it comes from, or why it was taken back
 * @param teacher who gave it
 * @param outline to draw it by; empty when it was taken back
 */
public record SpectrumAnswer(String name, String teacher, Instant at, List<SpectrumPoint> outline) {

    /**
     * A point of the outline.
     *
     * @param share part of the largest power per nm, in [0, 1]
     */
    public record SpectrumPoint(double nm, double share) {}
}
