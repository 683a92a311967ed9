package org.berrywatt.contract;

import java.time.Instant;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Something that waits for the teacher.
 *
 * @param id the same for the same thing, however often it is asked for
 * @param key what it is; text {@code page.desk.attention.KEY} of the catalogue
 * @param urgency 1 somebody may be hurt, 2 something is spoilt by the minute, 3 a number cannot be trusted, 4 a team waits
 * @param since when it began
 * @param values what to put into the text
 * @param remark what the cell's team reads about it, where there is something
 * @param action the one next step; text {@code page.desk.action.ACTION}
 * @param putOffUntil when it comes back, while the teacher has put it off
 */
public record AttentionItem(
        String id,
        String key,
        int urgency,
        @Nullable UUID teamId,
        @Nullable UUID cellId,
        @Nullable UUID stationId,
        Instant since,
        Map<String, Object> values,
        @Nullable Remark remark,
        String action,
        @Nullable Instant putOffUntil) {}
