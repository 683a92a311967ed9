package org.berrywatt.server.lesson;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.berrywatt.contract.PhoneAnswer;
import org.berrywatt.contract.PhoneRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Presence of the teams' phones: what each last told, and nothing of before. */
@Service
class Phones {

    private static final int MOST_WAITING = 9999;
    private static final int MOST_CODES = 20;
    private static final List<String> CODES =
            Arrays.stream(ProblemCode.values()).map(ProblemCode::code).toList();

    private final PhoneTable table;
    private final ApplicationEventPublisher events;

    Phones(PhoneTable table, ApplicationEventPublisher events) {
        this.table = table;
        this.events = events;
    }

    /**
     * Notes that a phone is there. Only other refusals than before are news: a teacher may be able to help.
     *
     * @throws Refusal {@code access.notAllowed} for anybody but a team's phone, or when a field is refused
     */
    @Transactional
    public PhoneAnswer put(UUID id, PhoneRequest request, Caller caller, Instant at) {
        var member = requirePhone(caller);
        var phone = new Phone(
                id, member.teamId(), Given.between("waiting", request.waiting(), 0, MOST_WAITING), codes(request), at);
        var before = table.refusedCodes(id);
        table.keep(phone);
        if (!before.equals(phone.refusedCodes())) {
            events.publishEvent(new LessonChanged(member.labDayId()));
        }
        return answer(phone);
    }

    /** The phones of a day, for teachers. */
    @Transactional(readOnly = true)
    public List<PhoneAnswer> list(UUID labDayId, Caller caller) {
        caller.requireTeacher();
        return table.ofLabDay(labDayId).stream().map(Phones::answer).toList();
    }

    private static List<String> codes(PhoneRequest request) {
        var codes = Given.need("refusedCodes", request.refusedCodes());
        Given.between("refusedCodes", codes.size(), 0, MOST_CODES);
        return codes.stream()
                .map(code -> Given.choice("refusedCodes", code, CODES))
                .toList();
    }

    private static Caller.TeamMember requirePhone(Caller caller) {
        caller.requireSomebody();
        return Stream.of(caller)
                .filter(Caller.TeamMember.class::isInstance)
                .map(Caller.TeamMember.class::cast)
                .findFirst()
                .orElseThrow(() -> Refusal.of(ProblemCode.NOT_ALLOWED));
    }

    private static PhoneAnswer answer(Phone phone) {
        return new PhoneAnswer(phone.id(), phone.teamId(), phone.waiting(), phone.refusedCodes(), phone.seenAt());
    }
}
