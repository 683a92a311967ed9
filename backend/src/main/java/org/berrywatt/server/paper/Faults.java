package org.berrywatt.server.paper;

import java.util.ArrayList;
import java.util.List;
import org.berrywatt.contract.PaperAnswer.Fault;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.ProblemSentences;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;

/** Everything that must be mended, each with its place and its sentence. */
final class Faults {

    private static final int MOST_TOLD = 200;

    private final ProblemSentences sentences;
    private final List<Fault> first = new ArrayList<>();
    private int count;

    Faults(ProblemSentences sentences) {
        this.sentences = sentences;
    }

    /** Of a file as a whole, or of its line of names. */
    void tell(String file, @Nullable Integer row, @Nullable String column, String value, Refusal refusal) {
        count++;
        if (first.size() < MOST_TOLD) {
            var onPaper = onPaper(refusal);
            var named = column == null ? onPaper : onPaper.field(column);
            first.add(new Fault(
                    file,
                    row,
                    column == null ? null : Words.excerpt(column),
                    Words.excerpt(value),
                    onPaper.code().code(),
                    sentences.of(named).detail()));
        }
    }

    /** Of a row, or of what stands in one of its columns. */
    void tell(PaperRow row, @Nullable String column, Refusal refusal) {
        if (column == null) {
            tell(row.file(), row.number(), null, "", refusal);
        } else {
            tell(row.file(), row.number(), row.header(column), row.text(column), refusal);
        }
    }

    /** Where a form asks its writer, a file says how it is answered. */
    private static Refusal onPaper(Refusal refusal) {
        return switch (refusal.code()) {
            case QUANTITY_UNUSUAL -> saidAs(ProblemCode.PAPER_UNUSUAL, refusal);
            case QUANTITY_AMBIGUOUS -> saidAs(ProblemCode.PAPER_AMBIGUOUS, refusal);
            default -> refusal;
        };
    }

    private static Refusal saidAs(ProblemCode code, Refusal refusal) {
        var said = Refusal.of(code);
        for (var value : refusal.values().entrySet()) {
            said = said.with(value.getKey(), value.getValue());
        }
        return said;
    }

    boolean any() {
        return count > 0;
    }

    int count() {
        return count;
    }

    List<Fault> first() {
        return List.copyOf(first);
    }
}
