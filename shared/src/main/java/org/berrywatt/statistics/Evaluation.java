package org.berrywatt.statistics;

/** How a p-value was found: by going through every rearrangement, or from the distribution of large samples. */
public enum Evaluation {
    EXACT("exact"),
    APPROXIMATE("approximate");

    private final String key;

    Evaluation(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
