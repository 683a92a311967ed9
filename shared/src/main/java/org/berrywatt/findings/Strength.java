package org.berrywatt.findings;

/**
 * How strongly the cells speak. The limits follow D. J. Benjamin and others, Nature Human Behaviour 2 (2018) 6-10: a
 * class looks at many parameters, so 0.05 alone would too often name one that does nothing.
 */
public enum Strength {
    /** p in (0, 0.005] and still at most 0.05 when corrected for all looks, and the joint model agrees; or 0.005 there. */
    CLEAR("clear"),
    /** p in (0, 0.05], alone or in the joint model after correction. */
    SUGGESTIVE("suggestive"),
    /** p in (0.05, 1]: this is not the same as no effect. */
    CANNOT_TELL("cannotTell"),
    /** Another parameter always changed along, so that nothing can be told apart. */
    CONFOUNDED("confounded"),
    /** Fewer than two levels with working cells, or fewer than three cells. */
    NOTHING_TO_COMPARE("nothingToCompare");

    private final String key;

    Strength(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }

    /** Constants stand from the strongest to the weakest. */
    boolean isWeakerThan(Strength other) {
        return compareTo(other) > 0;
    }

    static Strength of(double p) {
        if (p <= 0.005) {
            return CLEAR;
        }
        return p <= 0.05 ? SUGGESTIVE : CANNOT_TELL;
    }
}
