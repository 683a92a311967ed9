package org.berrywatt.server.typed;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.Typed;
import org.berrywatt.quantity.Amount;
import org.berrywatt.quantity.Field;
import org.berrywatt.quantity.MeasuringUnit;
import org.berrywatt.quantity.Units;
import org.berrywatt.reading.Judgement;
import org.berrywatt.reading.Plausibility;
import org.berrywatt.reading.Verdict;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.TypedValues.Unusual;

/** Refuses what is impossible in a field, and asks about what is unusual. */
record Judging(String path, Field field) {

    private static final MathContext SHOWN = new MathContext(6);

    void require(Amount amount, Unusual unusual) {
        require(amount, Plausibility.judge(field, amount), unusual);
    }

    /** Refuses a zero where the field's range begins with one but this use of it needs more. */
    void requirePositive(Amount amount) {
        if (!(amount.valueSi() > 0)) {
            throw refusal(ProblemCode.QUANTITY_IMPOSSIBLE, amount, new Judgement(Verdict.IMPOSSIBLE, null))
                    .limit("(" + interval(0, field.possibleHighSi(), amount).substring(1));
        }
    }

    /** The same for a number that nobody typed but that follows from others: no slip of a unit can be named. */
    void requireDerived(double valueSi, Unusual unusual) {
        var derived = new Amount("", field.unitKeys().get(0), field.quantity(), valueSi, 0);
        var verdict = Plausibility.judge(field, derived).verdict();
        require(derived, new Judgement(verdict, null), unusual);
    }

    private void require(Amount amount, Judgement judgement, Unusual unusual) {
        if (judgement.verdict() == Verdict.IMPOSSIBLE) {
            throw refusal(ProblemCode.QUANTITY_IMPOSSIBLE, amount, judgement)
                    .limit(interval(field.possibleLowSi(), field.possibleHighSi(), amount));
        }
        if (judgement.verdict() == Verdict.UNUSUAL && unusual == Unusual.ASK) {
            throw refusal(ProblemCode.QUANTITY_UNUSUAL, amount, judgement)
                    .limit(interval(field.usualLowSi(), field.usualHighSi(), amount));
        }
    }

    private Refusal refusal(ProblemCode code, Amount amount, Judgement judgement) {
        var unit = unit(amount.unitKey());
        var digits = shown(unit.fromSi(amount.valueSi()));
        var refusal = Refusal.of(code).field(path).value(digits + " " + unit.symbol());
        var likely = judgement.likelyUnitKey();
        return likely == null
                ? refusal
                : refusal.with("likely", digits + " " + unit(likely).symbol())
                        .choices(List.of(new Typed(digits, likely)));
    }

    private static String interval(double lowSi, double highSi, Amount amount) {
        var unit = unit(amount.unitKey());
        return "[" + shown(unit.fromSi(lowSi)) + ", " + shown(unit.fromSi(highSi)) + "] " + unit.symbol();
    }

    private static String shown(double value) {
        return new BigDecimal(value).round(SHOWN).stripTrailingZeros().toPlainString();
    }

    private static MeasuringUnit unit(String key) {
        return Units.of(key).orElseThrow();
    }
}
