package org.berrywatt.statistics;

/** How a p-value was found: by every rearrangement, by many drawn ones, or from the distribution of large samples. */
public enum Evaluation {
    EXACT("exact"),
    RESAMPLED("resampled"),
    APPROXIMATE("approximate");

    private final String key;

    Evaluation(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
