package org.berrywatt.server.typed;

import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.leaderboard.Count;
import org.berrywatt.leaderboard.Metric;
import org.berrywatt.leaderboard.PowerDensity;
import org.berrywatt.leaderboard.Rule;
import org.berrywatt.leaderboard.Yield;
import org.berrywatt.server.platform.Refusal;
import org.jspecify.annotations.Nullable;

/** Scoring rules by their keys: a metric and how a team's cells count under it. */
public final class Rules {

    private Rules() {}

    /**
     * The rule of one key.
     *
     * @param path the field's path in the request
     * @throws Refusal {@code value.missing}, {@code choice.unknown} for a strange key, {@code rule.share} or {@code rule.ageing}
     *     for a metric and a count that make no sense together
     */
    public static Rule read(String path, @Nullable String key) {
        String known = Given.choice(path, key, keys());
        int dot = known.indexOf('.');
        return of(
                path,
                metric(dot < 0 ? new PowerDensity().key() : known.substring(0, dot)),
                count(known.substring(dot + 1)));
    }

    /**
     * A metric and a count together.
     *
     * @throws Refusal {@code rule.share} or {@code rule.ageing} when they make no sense together
     */
    public static Rule of(String path, Metric metric, Count count) {
        if (Rule.isSensible(metric, count)) {
            return new Rule(metric, count);
        }
        throw Refusal.of(metric instanceof Yield ? ProblemCode.RULE_SHARE : ProblemCode.RULE_AGEING)
                .field(path)
                .value(count.key())
                .limit(String.join(
                        ", ", metric.counts().stream().map(Count::key).toList()));
    }

    /** Also of those that make no sense, which deserve a sentence of their own. */
    private static Collection<String> keys() {
        return Metric.all().stream()
                .flatMap(metric -> Stream.of(Count.values()).map(count -> key(metric, count)))
                .toList();
    }

    private static String key(Metric metric, Count count) {
        return metric instanceof PowerDensity ? count.key() : metric.key() + "." + count.key();
    }

    private static Metric metric(String key) {
        return Metric.all().stream()
                .filter(it -> it.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static Count count(String key) {
        return List.of(Count.values()).stream()
                .filter(it -> it.key().equals(key))
                .findFirst()
                .orElseThrow();
    }
}
