package org.berrywatt.server.access;

import java.util.UUID;
import java.util.function.Predicate;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;

/**
 * Who sends a request. Controllers take it as a parameter; nobody else looks at cookies.
 *
 * <p>Every {@code require...} refuses {@link Nobody} with {@code access.signInNeeded} and everybody else who may not
 * with {@code access.notAllowed}.
 */
public sealed interface Caller {

    /** A teacher may do everything, for every team and every day. */
    record Teacher(UUID id, String name) implements Caller {}

    /** A phone that belongs to a team. */
    record TeamMember(UUID teamId, UUID labDayId) implements Caller {}

    /** A browser without a pass. */
    record Nobody() implements Caller {}

    /** How entries are signed, for example {@code "team 7d4c..."}. */
    default String signature() {
        if (this instanceof Teacher teacher) {
            return "teacher " + teacher.id();
        }
        return this instanceof TeamMember member ? "team " + member.teamId() : "nobody";
    }

    /** Lets everybody with a pass pass. */
    default void requireSomebody() {
        require(member -> true);
    }

    /** Whether this is a teacher or a phone of this team. */
    default boolean speaksFor(UUID teamId) {
        return this instanceof Teacher
                || (this instanceof TeamMember member && member.teamId().equals(teamId));
    }

    default Teacher requireTeacher() {
        if (this instanceof Teacher teacher) {
            return teacher;
        }
        throw refusal();
    }

    /** Lets a teacher and this team pass. */
    default void requireTeam(UUID teamId) {
        require(member -> member.teamId().equals(teamId));
    }

    /** Lets a teacher and every team of this day pass. */
    default void requireLabDay(UUID labDayId) {
        require(member -> member.labDayId().equals(labDayId));
    }

    private void require(Predicate<TeamMember> allowed) {
        if (this instanceof Teacher) {
            return;
        }
        if (!(this instanceof TeamMember member && allowed.test(member))) {
            throw refusal();
        }
    }

    private Refusal refusal() {
        return Refusal.of(this instanceof Nobody ? ProblemCode.SIGN_IN_NEEDED : ProblemCode.NOT_ALLOWED);
    }
}
