package org.berrywatt.reading;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.berrywatt.quantity.Amount;
import org.berrywatt.quantity.Field;
import org.berrywatt.quantity.MeasuringUnit;
import org.berrywatt.quantity.Understanding;
import org.berrywatt.quantity.Understanding.Ambiguous;
import org.berrywatt.quantity.Understanding.Understood;
import org.berrywatt.quantity.Units;
import org.jspecify.annotations.Nullable;

/** Judges typed numbers by the ranges of their field. */
public final class Plausibility {

    /** Just outside of the usual range lies a rare cell; a slip of a prefix lies far outside. */
    private static final double FAR = 2;

    private Plausibility() {}

    /** The verdict on an amount, with the unit that was probably meant when it is not fine. */
    public static Judgement judge(Field field, Amount amount) {
        Verdict verdict = verdict(field, amount.valueSi());
        return new Judgement(verdict, isFarOut(field, amount.valueSi()) ? likelyUnit(field, amount) : null);
    }

    /**
     * Settles an ambiguous text by the field: where one meaning alone is possible, that one was meant. {@code "1,234"} beside
     * V is 1.234 V, since no cell has 1234 V; beside lx it stays open.
     *
     * @param amountOf the amount of a meaning
     */
    public static <T> Understanding<T> settle(Field field, Understanding<T> read, Function<T, Amount> amountOf) {
        if (!(read instanceof Ambiguous<T> open)) {
            return read;
        }
        List<T> possible = open.meanings().stream()
                .filter(it -> verdict(field, amountOf.apply(it).valueSi()) != Verdict.IMPOSSIBLE)
                .toList();
        return possible.size() == 1 ? new Understood<>(possible.get(0)) : read;
    }

    private static Verdict verdict(Field field, double valueSi) {
        if (valueSi >= field.usualLowSi() && valueSi <= field.usualHighSi()) {
            return Verdict.FINE;
        }
        boolean possible = valueSi >= field.possibleLowSi() && valueSi <= field.possibleHighSi();
        return possible ? Verdict.UNUSUAL : Verdict.IMPOSSIBLE;
    }

    private static boolean isFarOut(Field field, double valueSi) {
        double low = field.usualLowSi() > 0 ? field.usualLowSi() / FAR : field.usualLowSi() * FAR;
        return verdict(field, valueSi) != Verdict.FINE && (valueSi <= low || valueSi >= field.usualHighSi() * FAR);
    }

    /** Of the units in which the digits would be usual, the one nearest to what was typed: a slip is by one prefix. */
    private static @Nullable String likelyUnit(Field field, Amount amount) {
        return Units.of(amount.unitKey())
                .flatMap(typed -> others(field, typed)
                        .filter(other -> verdict(field, other.si(typed.fromSi(amount.valueSi()))) == Verdict.FINE)
                        .min(Comparator.comparingDouble(other -> distance(typed, other))))
                .map(MeasuringUnit::key)
                .orElse(null);
    }

    private static Stream<MeasuringUnit> others(Field field, MeasuringUnit typed) {
        return field.unitKeys().stream().filter(key -> !key.equals(typed.key())).flatMap(key -> Units.of(key).stream());
    }

    private static double distance(MeasuringUnit one, MeasuringUnit other) {
        return Math.abs(Math.log(one.toSi() / other.toSi()));
    }
}
