package org.berrywatt.demo;

import java.util.Set;
import org.berrywatt.quantity.Amount;
import org.berrywatt.quantity.Area;
import org.berrywatt.quantity.Quantity;
import org.berrywatt.quantity.TypedArea;
import org.berrywatt.quantity.TypedNumber;
import org.berrywatt.quantity.Understanding;
import org.berrywatt.quantity.Understanding.Understood;

/** Reads what the class typed as the server does. */
final class Typed {

    private Typed() {}

    static Amount amount(Quantity quantity, String text) {
        return understood(TypedNumber.read(text, null, Set.of(quantity)));
    }

    static Area area(String text) {
        return understood(TypedArea.read(text, null));
    }

    private static <T> T understood(Understanding<T> read) {
        if (read instanceof Understood<T> it) {
            return it.meaning();
        }
        throw new AssertionError(read.toString());
    }
}
