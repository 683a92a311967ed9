package org.berrywatt.server.lesson;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.HeaterOutRequest;
import org.berrywatt.contract.HeaterSlotAnswer;
import org.berrywatt.contract.HeaterSlotRequest;
import org.berrywatt.contract.LessonAnswer;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Api;
import org.jspecify.annotations.Nullable;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The heaters as their users write of them. */
final class Heaters {

    private Heaters() {}

    static MvcTestResult putIn(Api by, UUID cell, String heater, int position) {
        return put(by, request(cell, heater, position, "450", null, null));
    }

    static MvcTestResult put(Api by, HeaterSlotRequest request) {
        return by.put(request, "/api/heater-slots/{id}", UUID.randomUUID());
    }

    static MvcTestResult takeOut(Api by, UUID slot, @Nullable Instant at) {
        return by.put(new HeaterOutRequest(slot, at), "/api/heater-outs/{id}", UUID.randomUUID());
    }

    static HeaterSlotRequest request(
            UUID cell, String heater, int position, String target, @Nullable Instant inAt, @Nullable UUID replaces) {
        return new HeaterSlotRequest(cell, heater, position, new Typed(target, "degC"), 50, inAt, replaces, null);
    }

    static HeaterSlotAnswer answer(Api by, MvcTestResult result) {
        return by.answer(result, HeaterSlotAnswer.class);
    }

    /** The stays of a day as somebody sees them. */
    static List<HeaterSlotAnswer> of(Api by, UUID labDayId) {
        return by.answer(by.get("/api/labdays/{id}/lesson", labDayId), LessonAnswer.class)
                .slots();
    }
}
