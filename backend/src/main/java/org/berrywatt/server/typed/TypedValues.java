package org.berrywatt.server.typed;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.berrywatt.contract.Typed;
import org.berrywatt.quantity.Amount;
import org.berrywatt.quantity.Area;
import org.berrywatt.quantity.Field;
import org.berrywatt.quantity.Quantity;
import org.berrywatt.quantity.TypedArea;
import org.berrywatt.quantity.TypedNumber;
import org.berrywatt.quantity.Understanding;
import org.berrywatt.quantity.Understanding.Ambiguous;
import org.berrywatt.quantity.Understanding.Misunderstood;
import org.berrywatt.quantity.Understanding.Understood;
import org.berrywatt.reading.Plausibility;
import org.berrywatt.server.platform.Refusal;
import org.jspecify.annotations.Nullable;

/**
 * The door for typed numbers: what passes is understood without doubt and possible. Every refusal names the field, what
 * was typed, what is accepted and the likely slip.
 */
public final class TypedValues {

    /** What to do with a number that is possible but unusual. */
    public enum Unusual {
        /** Take it; the form has asked already, or no harm is done. */
        TAKE,
        /** Refuse it until its writer confirms it. */
        ASK
    }

    private TypedValues() {}

    /** A number that the form may leave out; null when it does. */
    public static @Nullable Amount optional(String path, @Nullable Typed typed, Field field) {
        return isLeftOut(typed) ? null : number(path, typed, Unusual.TAKE, field);
    }

    /** Whether nothing was typed at all. */
    public static boolean isLeftOut(@Nullable Typed typed) {
        return typed == null || textOf(typed).isBlank();
    }

    /**
     * A number of one of some fields, told apart by their quantity.
     *
     * @param path the field's path in the request
     * @throws Refusal {@code value.missing}, {@code quantity.empty}, {@code quantity.notANumber}, {@code
     *     quantity.unknownUnit}, {@code quantity.wrongUnit}, {@code quantity.ambiguous}, {@code quantity.impossible}, or,
     *     when it is to ask, {@code quantity.unusual}
     */
    public static Amount number(String path, @Nullable Typed typed, Unusual unusual, Field... fields) {
        var given = Given.need(path, typed);
        var read = TypedNumber.read(textOf(given), given.unit(), quantities(fields));
        var amount = settle(path, given, read, Function.identity(), fields);
        new Judging(path, fieldOf(amount, fields)).require(amount, unusual);
        return amount;
    }

    /**
     * Refuses a zero, or less, of a field whose range begins with zero.
     *
     * @throws Refusal {@code quantity.impossible}
     */
    public static void requirePositive(String path, Amount amount, Field field) {
        new Judging(path, field).requirePositive(amount);
    }

    /**
     * Judges a number that follows from typed ones.
     *
     * @param valueSi in the SI unit of the field
     * @throws Refusal {@code quantity.impossible}, or, when it is to ask, {@code quantity.unusual}
     */
    public static void judge(String path, double valueSi, Unusual unusual, Field field) {
        new Judging(path, field).requireDerived(valueSi, unusual);
    }

    /**
     * An area, typed as two sides or as an area.
     *
     * @throws Refusal as for {@link #number}; unusual areas are taken
     */
    public static Area area(String path, @Nullable Typed typed, Field field) {
        var given = Given.need(path, typed);
        var area = settle(path, given, TypedArea.read(textOf(given), given.unit()), Area::amount, field);
        new Judging(path, field).require(area.amount(), Unusual.TAKE);
        return area;
    }

    private static <T> T settle(
            String path, Typed typed, Understanding<T> read, Function<T, Amount> amountOf, Field... fields) {
        var settled = fields.length == 1 ? Plausibility.settle(fields[0], read, amountOf) : read;
        if (settled instanceof Understood<T> understood) {
            return understood.meaning();
        }
        throw settled instanceof Ambiguous<T> open
                ? Misreadings.ambiguous(
                        path, typed, open.meanings().stream().map(amountOf).toList())
                : Misreadings.refusal(path, typed, (Misunderstood<T>) settled);
    }

    private static Field fieldOf(Amount amount, Field... fields) {
        return Arrays.stream(fields)
                .filter(field -> field.quantity() == amount.quantity())
                .findFirst()
                .orElseThrow();
    }

    private static Set<Quantity> quantities(Field... fields) {
        return Arrays.stream(fields).map(Field::quantity).collect(Collectors.toSet());
    }

    private static String textOf(Typed typed) {
        return Optional.ofNullable(typed.text()).orElse("");
    }
}
