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

    Term term() {
        return logarithm.then(Math::exp);
    }
}
