package org.berrywatt.findings;

import java.util.Comparator;
import java.util.Map;
import org.berrywatt.findings.JointModel.Mean;
import org.berrywatt.findings.JointModel.Term;

/** Says what stands out once the other parameters are allowed for, and how much. */
final class JointNote {

    private JointNote() {}

    static Sentence of(Term term) {
        Mean best = term.means().stream()
                .max(Comparator.comparingDouble(Mean::value))
                .orElseThrow();
        Mean worst = term.means().stream()
                .min(Comparator.comparingDouble(Mean::value))
                .orElseThrow();
        return Sentence.of(
                "joint.shows",
                Map.of(
                        "ratio", Notes.twoDigits(best.value() / worst.value()),
                        "bestLevel", best.level(),
                        "worstLevel", worst.level()));
    }
}
