package org.berrywatt.normalise;

/**
 * Reference irradiance over effective irradiance at the cell.
 *
 * @param logarithm as a term of the model
 * @param span of ratios that trials meet
 */
record Ratio(Term logarithm, RatioSpan span) {

    static Ratio of(Reference reference, LightTerms light, double effectiveWm2) {
        var logReference = Math.log(reference.irradianceWm2());
        return new Ratio(
                light.logEffective().then(logEffective -> logReference - logEffective),
                RatioSpan.around(reference.irradianceWm2() / effectiveWm2, light.relativeUncertainty()));
    }

    /** How far a fitted diode is trusted: a factor of two either way; by three its answers miss more often than they say (simulated days). */
    static final double TRUSTED = 2;

    boolean isTrusted() {
        return Math.abs(span.middle()) <= Math.log(TRUSTED);
    }

    boolean isFarAbove() {
        return span.middle() > Math.log(TRUSTED);
    }

    /** The part of the way for which a fitted diode is trusted. */
    Ratio trusted() {
        return isTrusted() ? this : new Ratio(Term.constant(edge()), new RatioSpan(edge(), 0));
    }

    /** The rest of the way. */
    Ratio beyond() {
        return new Ratio(logarithm.then(log -> log - edge()), new RatioSpan(span.middle() - edge(), span.halfWidth()));
    }

    private double edge() {
        return Math.copySign(Math.log(TRUSTED), span.middle());
    }

    Term term() {
        return logarithm.then(Math::exp);
    }
}
