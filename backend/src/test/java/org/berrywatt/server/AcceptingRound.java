package org.berrywatt.server;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * What one machine did in a second, each in turn.
 *
 * @param bare rows inserted as accepting leaves them, through the same pool
 * @param within readings accepted without a network, through the same pool
 * @param fromPhones readings accepted over HTTP
 * @param asking requests of the same phones that only ask who they are
 */
record AcceptingRound(double bare, double within, double fromPhones, double asking) {

    /** What would be left of bare inserts if each waited for a phone's request, which these cores also make. */
    double bareFromPhones() {
        return 1 / (1 / bare + 1 / asking);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "bare %.0f/s, accepted %.0f/s, accepted from phones %.0f/s, phones only asking %.0f/s",
                bare,
                within,
                fromPhones,
                asking);
    }

    /** A row for each comparison, its ratio that of the median round. */
    static List<String> rows(List<AcceptingRound> rounds, int phones, int readings) {
        return List.of(
                row(
                        "accepted readings a second",
                        "bare inserts of the same rows through the same pool, %d of each, %d rounds"
                                .formatted(readings, rounds.size()),
                        rounds,
                        AcceptingRound::within,
                        AcceptingRound::bare),
                row(
                        "accepted readings a second from %d phones on the same cores".formatted(phones),
                        "the same bare inserts, each after a request of such a phone that only asks who it is: our own measure",
                        rounds,
                        AcceptingRound::fromPhones,
                        AcceptingRound::bareFromPhones),
                row(
                        "the same",
                        "the same bare inserts, without any phone",
                        rounds,
                        AcceptingRound::fromPhones,
                        AcceptingRound::bare));
    }

    private static String row(
            String what,
            String beside,
            List<AcceptingRound> rounds,
            ToDoubleFunction<AcceptingRound> here,
            ToDoubleFunction<AcceptingRound> there) {
        double ratio = median(rounds, round -> here.applyAsDouble(round) / there.applyAsDouble(round));
        return Promise.row(
                what,
                beside,
                "≥ 0.5",
                String.format(Locale.ROOT, "%.2f (%.0f/s, %.0f/s)", ratio, median(rounds, here), median(rounds, there)),
                ratio >= 0.5);
    }

    private static double median(List<AcceptingRound> rounds, ToDoubleFunction<AcceptingRound> figure) {
        double[] sorted = rounds.stream().mapToDouble(figure).sorted().toArray();
        return sorted[sorted.length / 2];
    }
}
