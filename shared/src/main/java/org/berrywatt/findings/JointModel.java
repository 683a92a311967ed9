package org.berrywatt.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.berrywatt.statistics.Gvif;
import org.berrywatt.statistics.Holm;
import org.berrywatt.statistics.RandomIntercept;

/**
 * All parameters at once: log performance = intercept + parameters + team + rest, by restricted maximum likelihood.
 *
 * @param n cells in the model
 * @param teams teams in the model
 * @param terms parameters in the model
 * @param left parameters that stayed outside
 * @param teamDeviation standard deviation between teams, of natural logarithms
 * @param cellDeviation standard deviation between cells of one team
 */
public record JointModel(
        int n, int teams, List<Term> terms, List<String> left, double teamDeviation, double cellDeviation) {

    /**
     * A parameter in the model.
     *
     * @param f Wald's F
     * @param degreesBetween numerator
     * @param degreesWithin denominator: cells where the parameter varies within teams, else teams, less what was estimated there
     *     (J. C. Pinheiro and D. M. Bates, Mixed-Effects Models in S and S-PLUS (2000), section 2.4)
     * @param p in [0, 1]
     * @param holm p corrected for the number of terms
     * @param inflation how many times wider the other parameters make its interval, in [1, ∞)
     * @param means performance at each level, all others at their mean; for numbers at the least and the greatest
     */
    public record Term(
            String parameter,
            double f,
            int degreesBetween,
            int degreesWithin,
            double p,
            double holm,
            OptionalDouble inflation,
            List<Mean> means) {}

    /** Marginal mean of a level, as a performance (geometric), with its 95 % interval. */
    public record Mean(String level, double value, double low, double high) {}

    static Optional<JointModel> of(Study study, List<Look> looks) {
        JointTerms terms = JointTerms.of(study, looks);
        if (terms.taken().isEmpty()) {
            return Optional.empty();
        }
        double[] logs = study.logsOf(terms.cells());
        int[] teams = Confounding.dense(study.teamsOf(terms.cells()));
        boolean one = Arrays.stream(teams).distinct().count() < 2;
        // a single team has no variance of its own: every cell then stands alone
        int[] groups = one ? rising(teams.length) : teams;
        return RandomIntercept.fit(terms.columns(), logs, groups).value().map(fit -> of(terms, fit, groups, one));
    }

    private static int[] rising(int n) {
        int[] rising = new int[n];
        Arrays.setAll(rising, i -> i);
        return rising;
    }

    private static JointModel of(JointTerms terms, RandomIntercept fit, int[] groups, boolean oneTeam) {
        Wald wald = new Wald(terms, fit, groups);
        double[] p = new double[terms.taken().size()];
        Arrays.setAll(p, term -> wald.p(term));
        double[] holm = Holm.adjust(p);
        double[][] correlations = Products.correlations(List.of(terms.columns()));
        List<Term> all = new ArrayList<>();
        for (int term = 0; term < p.length; term++) {
            int[] places = terms.places(term);
            OptionalDouble gvif = Gvif.of(correlations, places);
            all.add(new Term(
                    terms.taken().get(term).factor().key(),
                    wald.f(term),
                    places.length,
                    wald.degreesWithin(term),
                    p[term],
                    holm[term],
                    gvif.isPresent()
                            ? OptionalDouble.of(Math.pow(gvif.getAsDouble(), 0.5 / places.length))
                            : OptionalDouble.empty(),
                    MarginalMeans.of(terms, fit, term, wald.degreesWithin(term))));
        }
        return new JointModel(
                groups.length,
                oneTeam ? 1 : fit.groupCount(),
                all,
                terms.left(),
                Math.sqrt(fit.groupVariance()),
                Math.sqrt(fit.residualVariance()));
    }

    Optional<Term> term(String parameter) {
        return terms.stream().filter(term -> term.parameter().equals(parameter)).findFirst();
    }
}
