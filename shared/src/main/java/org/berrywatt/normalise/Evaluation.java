package org.berrywatt.normalise;

import org.berrywatt.uncertainty.Budget;
import org.berrywatt.uncertainty.Deviates;
import org.berrywatt.uncertainty.FirstOrder;
import org.berrywatt.uncertainty.Input;
import org.berrywatt.uncertainty.Interval;
import org.berrywatt.uncertainty.MonteCarlo;
import org.berrywatt.uncertainty.Sample;

/** The figures of one cell with their uncertainty, evaluated when they are asked for. Immutable. */
public final class Evaluation {
    private static final double PROBABILITY = 0.95;
    private static final String EARLIER = "/earlier";

    private final Model model;

    Evaluation(Model model) {
        this.model = model;
    }

    /** Value, standard uncertainty of first order and what each input adds to it (JCGM 100:2008, 5.1). */
    public Budget budget(Measurand measurand) {
        return FirstOrder.evaluate(model.inputs(), model.figure(measurand));
    }

    /**
     * The figure in every trial, in [0, ∞) each (JCGM 101:2008, clause 7). Trials of two cells from the same deviates move
     * together where the cells share a light reading, a light meter, a lamp or a multimeter.
     *
     * @param owner names the cell; two cells with one name would have the same luck
     */
    public double[] trials(Measurand measurand, Deviates deviates, String owner) {
        return MonteCarlo.trials(model.inputs(), model.figure(measurand), deviates, owner);
    }

    /**
     * The figure of an earlier reading in the same trials: the area has the same error as in the reading that counts, and so
     * have meters and lamps; clips, digits and the reading of the light are others.
     */
    public double[] earlierTrials(Measurand measurand, Deviates deviates, String owner) {
        return MonteCarlo.trials(
                model.inputs().stream().map(input -> earlier(input, owner)).toList(),
                model.figure(measurand),
                deviates,
                owner + EARLIER);
    }

    private static Input earlier(Input input, String owner) {
        return switch (input.name()) {
            case Model.AREA -> input.sharedBy(owner + "/" + input.name());
            case LightTerms.READING -> input.sharedBy(input.cause() + EARLIER);
            default -> input;
        };
    }

    /** Shortest 95 % interval of the same trials (JCGM 101:2008, 7.7.4); it never reaches below 0. */
    public Interval interval(Measurand measurand, Deviates deviates, String owner) {
        return Sample.of(trials(measurand, deviates, owner)).shortestInterval(PROBABILITY);
    }
}
