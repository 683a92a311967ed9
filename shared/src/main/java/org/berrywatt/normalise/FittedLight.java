package org.berrywatt.normalise;

/**
 * The light to which a fitted diode carries a result, in words and formulas.
 *
 * @param part added to the key of a step that ends before the reference
 * @param index of the light: the reference, or as far as the fit is trusted
 * @param definition of that light, empty for the reference
 */
record FittedLight(String part, String index, String definition) {
    private static final int TRUSTED = (int) Ratio.TRUSTED;

    static FittedLight of(Model model) {
        if (model.scaling().between() == null) {
            return new FittedLight("", "ref", "");
        }
        var definition = model.value(model.ratio()) > 1 ? TRUSTED + " · Geff" : "Geff / " + TRUSTED;
        return new FittedLight("Part", "fit", ", Gfit = " + definition);
    }

    String key(String step) {
        return step + part;
    }

    /** What multiplies a quantity that was read. */
    String formula(String quantity, String read) {
        return quantity + index + " = " + read + " · " + quantity + "diode(G" + index + ") / " + quantity
                + "diode(Geff)" + definition;
    }
}
