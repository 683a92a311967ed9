package org.berrywatt.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.berrywatt.statistics.CramersV;

/**
 * Which parameters changed together among the cells that count, so that a difference seen with one may belong to the other.
 *
 * <p>Two parameters are laid out as a table of their levels. Levels that meet in a cell hang together; a parameter with k levels
 * in c separate pieces leaves k - c differences that can be told from the other parameter. None left means wholly confounded.
 * Numbers with more than {@value Levels#FEW} values are gathered into four ranges. Source: R. C. Bose, Essays in Probability and
 * Statistics (1969), connectedness of two-way tables.
 *
 * @param pairs every two parameters with two levels or more each, closest first
 */
public record Confounding(List<Pair> pairs) {

    private static final int MOST_LEVELS = 250;

    /**
     * Two parameters.
     *
     * @param cramersV how closely they go together, in [0, 1]
     * @param firstTold differences of the first that can be told from the second, in [0, levels - 1]
     * @param secondTold differences of the second that can be told from the first
     * @param counts cells at each pair of levels
     */
    public record Pair(String first, String second, double cramersV, int firstTold, int secondTold, LevelTable counts) {

        /** Whether nothing of either can be told from the other. */
        public boolean isAliased() {
            return firstTold == 0 && secondTold == 0;
        }

        boolean hides(String parameter) {
            return (parameter.equals(first) && firstTold == 0) || (parameter.equals(second) && secondTold == 0);
        }

        boolean has(String parameter) {
            return parameter.equals(first) || parameter.equals(second);
        }

        String other(String parameter) {
            return parameter.equals(first) ? second : first;
        }
    }

    static Confounding among(Study study, List<Factor> factors) {
        List<Factor> varied = factors.stream()
                .filter(factor -> varies(factor, study.working()))
                .toList();
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < varied.size(); i++) {
            for (int j = i + 1; j < varied.size(); j++) {
                pair(study, varied.get(i), varied.get(j)).ifPresent(pairs::add);
            }
        }
        pairs.sort((a, b) -> Double.compare(b.cramersV(), a.cramersV()));
        return new Confounding(List.copyOf(pairs));
    }

    private static boolean varies(Factor factor, int[] cells) {
        int levels = factor.levelsAmong(cells);
        return levels >= 2 && (factor.isNumber() || levels <= MOST_LEVELS);
    }

    private static Optional<Pair> pair(Study study, Factor first, Factor second) {
        int[] both = second.recordedAmong(first.recordedAmong(study.working()));
        LevelTable table = LevelTable.of(first, second, both);
        if (table.rows() < 2 || table.columns() < 2) {
            return Optional.empty();
        }
        int pieces = table.pieces();
        return Optional.of(new Pair(
                first.key(),
                second.key(),
                CramersV.of(table.counts()),
                table.rows() - pieces,
                table.columns() - pieces,
                table));
    }

    /** The parameter that hides another one most closely, when one does. */
    Optional<Pair> hiding(String parameter) {
        return pairs.stream().filter(pair -> pair.hides(parameter)).findFirst();
    }

    /** All that go hand in hand with a parameter, itself first. */
    public List<String> aliases(String parameter) {
        List<String> set = new ArrayList<>(List.of(parameter));
        pairs.stream()
                .filter(pair -> pair.isAliased() && pair.has(parameter))
                .map(pair -> pair.other(parameter))
                .forEach(set::add);
        return set;
    }

    /** Groups of two or more parameters that always changed together. */
    public List<List<String>> aliasSets() {
        return pairs.stream()
                .filter(Pair::isAliased)
                .map(pair -> aliases(pair.first()).stream().sorted().toList())
                .distinct()
                .toList();
    }

    static int[] dense(int[] codes) {
        int[] distinct = Arrays.stream(codes).sorted().distinct().toArray();
        return IntStream.of(codes)
                .map(code -> Arrays.binarySearch(distinct, code))
                .toArray();
    }
}
