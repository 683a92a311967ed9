package org.berrywatt.leaderboard;

import java.util.List;
import org.berrywatt.uncertainty.Deviates;
import org.jspecify.annotations.Nullable;

/**
 * A cell's power per area over that of the day's control cell, read at the same station near in time; a ratio, in [0, ∞). The
 * control cell itself has 1.
 *
 * <p>What both readings owe to one station's light, one light meter and one lamp is drawn once for both in every trial and
 * cancels; with one dye the light cancels altogether, so that neither the light meter nor the lamp's colour matters.
 *
 * <p>Eligible is a cell with a result at a station where the control cell has one too, read within {@value
 * MeasuredCell#NEAR_MINUTES} minutes. Otherwise it is outstanding, and the remedy is the teacher's: choose a control cell; read
 * it at that station; or choose a stronger one, when its power cannot be told from 0. A failed cell gives 0.
 */
public record RatioToControl() implements Metric {

    @Override
    public String key() {
        return "ratioToControl";
    }

    @Override
    public String unit() {
        return "times";
    }

    @Override
    public List<Count> counts() {
        return List.of(Count.MEDIAN, Count.BEST_VERIFIED, Count.MEAN);
    }

    @Override
    public Score score(MeasuredCell cell, Deviates deviates) {
        var control = cell.control();
        return control == null
                ? new Score.Missing(Obstacle.NO_CONTROL)
                : ratio(cell.now().powerDensity(), control.reading());
    }

    private static Score ratio(Score.Found power, @Nullable EvaluatedReading control) {
        return of(power, control == null ? null : control.powerDensity());
    }

    /**
     * A figure over that of the control cell.
     *
     * @param control null when it has none
     */
    public static Score of(Score.Found cell, Score.@Nullable Found control) {
        return control == null
                ? new Score.Missing(Obstacle.CONTROL_NOT_READ)
                : cell.over(control, Obstacle.CONTROL_TOO_FAINT);
    }
}
