package org.berrywatt.findings;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.berrywatt.statistics.BlockedTest;
import org.berrywatt.statistics.Holm;
import org.berrywatt.statistics.Resampling;

/**
 * All that a study says: every parameter alone, all together, what cannot be told apart, and what to build next.
 *
 * @param parameters in the order of the study's factors
 * @param joint empty when no parameter fits into a model
 * @param next sentences about further cells
 */
public record StudyFindings(
        List<ParameterFinding> parameters, Optional<JointModel> joint, Confounding confounding, List<Sentence> next) {

    /** Looks at every parameter; the same study and the same resampling give the same findings. */
    public static StudyFindings of(Study study, Resampling resampling) {
        return of(study, resampling, () -> {});
    }

    /**
     * The same, telling how far it has come.
     *
     * @param step called once before every parameter is looked at, and what it throws ends the work
     */
    public static StudyFindings of(Study study, Resampling resampling, Runnable step) {
        List<Look> looks = study.factors().stream()
                .peek(factor -> step.run())
                .map(factor -> Look.at(study, factor, resampling))
                .toList();
        Confounding confounding = Confounding.among(
                study, looks.stream().filter(Look::compares).map(Look::factor).toList());
        Optional<JointModel> joint = JointModel.of(study, looks);
        List<ParameterFinding> findings = new Findings(study, looks, confounding, joint, resampling).all();
        return new StudyFindings(findings, joint, confounding, NextCells.of(confounding, findings));
    }

    /** The finding about a parameter. */
    public Optional<ParameterFinding> about(String parameter) {
        return parameters.stream()
                .filter(finding -> finding.parameter().equals(parameter))
                .findFirst();
    }

    private record Findings(
            Study study, List<Look> looks, Confounding confounding, Optional<JointModel> joint, Resampling resampling) {

        List<ParameterFinding> all() {
            double[] holm = adjusted(looks.stream()
                    .mapToDouble(look -> look.compares() ? look.p() : Double.NaN)
                    .toArray());
            double[] yields = adjusted(looks.stream()
                    .mapToDouble(
                            look -> look.tests().yield().map(BlockedTest::p).orElse(Double.NaN))
                    .toArray());
            return IntStream.range(0, looks.size())
                    .mapToObj(i -> finding(looks.get(i), holm[i], yields[i]))
                    .toList();
        }

        /** What was not looked at stays 1 and costs nothing. */
        private static double[] adjusted(double[] p) {
            int[] looked = IntStream.range(0, p.length)
                    .filter(i -> !Double.isNaN(p[i]))
                    .toArray();
            double[] holm =
                    Holm.adjust(Arrays.stream(looked).mapToDouble(i -> p[i]).toArray());
            double[] all = new double[p.length];
            Arrays.fill(all, 1);
            for (int i = 0; i < looked.length; i++) {
                all[looked[i]] = holm[i];
            }
            return all;
        }

        private ParameterFinding finding(Look look, double holm, double yieldHolm) {
            String key = look.factor().key();
            Judgement judgement = new Judgement(look, holm, besideOthers(key), confounding.hiding(key));
            Optional<Sentence> influence = judgement.believed() && !judgement.raisedJointly()
                    ? Influence.of(study, look, resampling)
                    : Optional.empty();
            return new ParameterFinding(
                    key,
                    look.factor().isNumber(),
                    look.levels().all(),
                    look.tests(),
                    look.effect(),
                    look.factor().isNumber() ? YieldCurve.of(look.levels()) : Optional.empty(),
                    judgement.strength(),
                    yieldStrength(look, yieldHolm),
                    look.p(),
                    holm,
                    look.entries().size(),
                    look.entries().teamsOnly(),
                    judgement.hidden().map(pair -> pair.other(key)),
                    judgement.sentence(),
                    new Notes(study, judgement, influence).all());
        }

        /** A model of one parameter would only repeat its look with a bolder assumption. */
        private Optional<JointModel.Term> besideOthers(String parameter) {
            return joint.filter(model -> model.terms().size() > 1).flatMap(model -> model.term(parameter));
        }

        private static Strength yieldStrength(Look look, double holm) {
            return look.tests()
                    .yield()
                    .map(test -> Strength.of(test.p()))
                    .map(alone -> alone == Strength.CLEAR && holm > 0.05 ? Strength.SUGGESTIVE : alone)
                    .orElse(Strength.NOTHING_TO_COMPARE);
        }
    }
}
