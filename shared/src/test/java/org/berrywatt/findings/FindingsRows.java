package org.berrywatt.findings;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import org.berrywatt.validation.Row;

/** How often findings are right on simulated days whose truth is known. */
public final class FindingsRows {

    private static final String COAT = "coat";

    private FindingsRows() {}

    /**
     * The rows of the table.
     *
     * @param days simulated for each question
     */
    public static List<Row> of(int days) {
        List<StudyFindings> still = played(days, 1, false);
        List<StudyFindings> planted = played(days, 3, false);
        List<StudyFindings> shadowed = played(days, 3, true);
        String source = days + " simulated days, eight teams of three cells";
        return List.of(
                Row.atMost(
                        "days without any effect on which a parameter is called clear",
                        source,
                        5,
                        percent(still, FindingsRows::callsAnyClear),
                        "%"),
                Row.atLeast(
                        "days with a ratio of 3 drawn within teams on which it is clear or a hint",
                        source,
                        80,
                        percent(planted, FindingsRows::seesCoat),
                        "%"),
                Row.atLeast(
                        "days with two parameters that always changed together on which both are called confounded",
                        source,
                        95,
                        percent(shadowed, FindingsRows::namesShadow),
                        "%"),
                Row.between(
                        "95 % intervals of the ratio that hold the true one, no effect",
                        source, 93, 97, percent(still, found -> holds(found, 1)), "%"),
                Row.between(
                        "95 % intervals of the ratio that hold the true one, ratio of 3",
                        source, 93, 97, percent(planted, found -> holds(found, 3)), "%"));
    }

    private static List<StudyFindings> played(int days, double ratio, boolean shadowed) {
        return LongStream.range(0, days)
                .parallel()
                .mapToObj(seed -> new SimulatedDay(seed, ratio, shadowed).findings())
                .toList();
    }

    static boolean callsAnyClear(StudyFindings found) {
        return found.parameters().stream().anyMatch(one -> one.strength() == Strength.CLEAR);
    }

    static boolean seesCoat(StudyFindings found) {
        Strength strength = found.about(COAT).orElseThrow().strength();
        return strength == Strength.CLEAR || strength == Strength.SUGGESTIVE;
    }

    static boolean namesShadow(StudyFindings found) {
        return found.about(COAT).orElseThrow().strength() == Strength.CONFOUNDED
                && found.about("seal").orElseThrow().strength() == Strength.CONFOUNDED;
    }

    private static boolean holds(StudyFindings found, double ratio) {
        return found.about(COAT)
                .flatMap(ParameterFinding::effect)
                .filter(effect -> effect.low() <= ratio && ratio <= effect.high())
                .isPresent();
    }

    private static double percent(List<StudyFindings> days, Predicate<StudyFindings> right) {
        return 100.0 * days.stream().filter(right).count() / days.size();
    }
}
