package org.berrywatt.leaderboard;

import java.util.UUID;
import org.berrywatt.normalise.Measurand;
import org.berrywatt.normalise.Result;
import org.berrywatt.uncertainty.Deviates;

/**
 * A reading of a cell with its result.
 *
 * @param powerDensity its power per area at reference in W/m², drawn
 */
public record EvaluatedReading(UUID cellId, Result result, Score.Found powerDensity) {

    /** With its power drawn. */
    public static EvaluatedReading of(UUID cellId, Result result, Deviates deviates) {
        return new EvaluatedReading(
                cellId,
                result,
                Score.Found.of(
                        result.powerDensityWm2().estimate(),
                        Trials.of(result.trials(Measurand.POWER_DENSITY, deviates, cellId.toString()))));
    }

    /** A figure of the reading that counts. */
    Score.Found figure(Measurand measurand, Deviates deviates) {
        var trials = result.trials(measurand, deviates, cellId.toString());
        return Score.Found.of(result.evaluation().budget(measurand).estimate(), Trials.of(trials));
    }

    /** A figure of an earlier reading of the same cell, to be compared with one that counts. */
    Score.Found earlierFigure(Measurand measurand, Deviates deviates) {
        var trials = result.evaluation().earlierTrials(measurand, deviates, cellId.toString());
        return Score.Found.of(result.evaluation().budget(measurand).estimate(), Trials.of(trials));
    }
}
