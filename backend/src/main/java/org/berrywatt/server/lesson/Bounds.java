package org.berrywatt.server.lesson;

import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;

/** How much a lab day keeps of its lesson. */
final class Bounds {

    private Bounds() {}

    /** @throws Refusal {@code lesson.full} when there are as many as may be */
    static void require(long count, long most) {
        if (count >= most) {
            throw Refusal.of(ProblemCode.LESSON_FULL).value(count).limit(most);
        }
    }
}
