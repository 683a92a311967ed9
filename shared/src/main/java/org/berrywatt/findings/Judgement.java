package org.berrywatt.findings;

import java.util.Map;
import java.util.Optional;
import org.berrywatt.findings.Confounding.Pair;
import org.berrywatt.findings.JointModel.Term;

/**
 * The strength of one look, once all looks, the joint model and what is confounded are known.
 *
 * @param holm p of the look, corrected for all looks
 * @param joint its term in the joint model, when it is there
 * @param hidden by which parameter, when nothing can be told from it
 */
record Judgement(Look look, double holm, Optional<Term> joint, Optional<Pair> hidden) {

    private static final double AT_ALL = 0.05;
    private static final double CLEARLY = 0.005;

    Strength strength() {
        if (!look.compares()) {
            return Strength.NOTHING_TO_COMPARE;
        }
        return hidden.isPresent() ? Strength.CONFOUNDED : unhidden();
    }

    private Strength unhidden() {
        Strength alone = Strength.of(look.p());
        if (joint.filter(term -> term.holm() <= CLEARLY).isPresent() && !survivorsMislead()) {
            return Strength.CLEAR;
        }
        if (alone == Strength.CLEAR && (holm > AT_ALL || fadesJointly() || survivorsMislead())) {
            return Strength.SUGGESTIVE;
        }
        return alone == Strength.CANNOT_TELL && showsJointly() ? Strength.SUGGESTIVE : alone;
    }

    /** Seen alone, gone once the other parameters are allowed for. */
    boolean fadesJointly() {
        return look.p() <= AT_ALL && joint.filter(term -> term.p() > AT_ALL).isPresent();
    }

    /** Not seen alone, but seen once the other parameters' differences are taken out. */
    boolean showsJointly() {
        return look.p() > AT_ALL && joint.filter(term -> term.holm() <= AT_ALL).isPresent();
    }

    /** Believed more than the look alone would allow, by what the joint model shows. */
    boolean raisedJointly() {
        return believed() && Strength.of(look.p()).isWeakerThan(strength()) && joint.isPresent();
    }

    /** The best level of the survivors is not the best when broken cells count. */
    boolean survivorsMislead() {
        Optional<Level> best = look.levels().best();
        return look.levels().areFew()
                && best.filter(level -> level.failed() >= level.counted()).isPresent();
    }

    boolean believed() {
        return strength() == Strength.CLEAR || strength() == Strength.SUGGESTIVE;
    }

    Sentence sentence() {
        return switch (strength()) {
            case NOTHING_TO_COMPARE -> nothing();
            case CONFOUNDED -> confounded();
            case CANNOT_TELL ->
                Sentence.of("cannotTell", Map.of("cells", look.levels().counted()));
            case CLEAR, SUGGESTIVE -> seen();
        };
    }

    private Sentence nothing() {
        String reason = look.nothing().orElseThrow();
        return Sentence.of(
                "nothingToCompare." + reason,
                Map.of("cells", look.levels().counted(), "made", look.levels().made()));
    }

    private Sentence confounded() {
        String other = hidden.orElseThrow().other(look.factor().key());
        String key = Strength.of(look.p()) == Strength.CANNOT_TELL ? "confounded.unseen" : "confounded.seen";
        return Sentence.of(key, Map.of("cells", look.levels().counted(), "otherParameter", other));
    }

    private Sentence seen() {
        String best = look.levels().best().orElseThrow().key();
        return Sentence.of(
                strength().key() + "." + look.shape(),
                Map.of("cells", look.levels().counted(), "bestLevel", best));
    }
}
