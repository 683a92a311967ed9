package org.berrywatt.cell;

import static org.berrywatt.cell.FailureKind.CARBON_RUBBED_OFF;
import static org.berrywatt.cell.FailureKind.COLOUR_TURNED;
import static org.berrywatt.cell.FailureKind.CONTACT_LOST;
import static org.berrywatt.cell.FailureKind.CRACKED_WHILE_DRYING;
import static org.berrywatt.cell.FailureKind.DRIED_OUT;
import static org.berrywatt.cell.FailureKind.ELECTRODES_TOUCH;
import static org.berrywatt.cell.FailureKind.FLAKED;
import static org.berrywatt.cell.FailureKind.GLASS_BENT;
import static org.berrywatt.cell.FailureKind.GLASS_BROKE;
import static org.berrywatt.cell.FailureKind.GLASS_CRACKED;
import static org.berrywatt.cell.FailureKind.LEAKED;
import static org.berrywatt.cell.FailureKind.NO_READING;
import static org.berrywatt.cell.FailureKind.OTHER;
import static org.berrywatt.cell.FailureKind.PATCHY;
import static org.berrywatt.cell.FailureKind.STAYED_BROWN;
import static org.berrywatt.cell.FailureKind.STAYED_PALE;
import static org.berrywatt.cell.FailureKind.WASHED_OFF;
import static org.berrywatt.cell.FailureKind.WRONG_SIDE;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The stages of a cell in the order of the bench, each with the ways in which it may fail. */
public enum Stage {
    /** Glass cleaned, paste spread and dried. */
    FILM("film", false),
    /** Film baked and cooled. Hot: burns look cold. */
    BAKE("bake", true),
    /** Film soaked, rinsed and dried. */
    DYE("dye", false),
    /** Second glass coated, often over a candle. Hot: flame and hot glass. */
    COUNTER_ELECTRODE("counterElectrode", true),
    /** Cell closed and filled with electrolyte. */
    FILL("fill", false),
    /** Cell read in the dark and under light. */
    MEASURE("measure", false);

    private final String key;
    private final boolean hot;

    Stage(String key, boolean hot) {
        this.key = key;
        this.hot = hot;
    }

    /** The stage of a key, or empty when there is none. */
    public static Optional<Stage> of(String key) {
        return Arrays.stream(values()).filter(stage -> stage.key.equals(key)).findFirst();
    }

    public String key() {
        return key;
    }

    /** Whether something at this stage burns, so that a screen shows the caution. */
    public boolean hot() {
        return hot;
    }

    /** The ways in which this stage may fail, the commonest first and {@link FailureKind#OTHER} last. */
    public List<FailureKind> failures() {
        return switch (this) {
            case FILM -> List.of(PATCHY, CRACKED_WHILE_DRYING, WRONG_SIDE, GLASS_BROKE, OTHER);
            case BAKE -> List.of(STAYED_BROWN, FLAKED, GLASS_CRACKED, GLASS_BENT, OTHER);
            case DYE -> List.of(WASHED_OFF, STAYED_PALE, COLOUR_TURNED, GLASS_BROKE, OTHER);
            case COUNTER_ELECTRODE -> List.of(CARBON_RUBBED_OFF, GLASS_CRACKED, GLASS_BROKE, OTHER);
            case FILL -> List.of(LEAKED, DRIED_OUT, ELECTRODES_TOUCH, GLASS_BROKE, OTHER);
            case MEASURE -> List.of(NO_READING, CONTACT_LOST, DRIED_OUT, ELECTRODES_TOUCH, GLASS_BROKE, OTHER);
        };
    }

    /** The failure of a key at this stage, or empty when this stage does not fail so. */
    public Optional<FailureKind> failure(String failureKey) {
        return failures().stream().filter(kind -> kind.key().equals(failureKey)).findFirst();
    }
}
