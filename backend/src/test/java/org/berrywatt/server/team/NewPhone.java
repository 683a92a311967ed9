package org.berrywatt.server.team;

import static java.util.Objects.requireNonNull;

import jakarta.servlet.http.Cookie;
import org.berrywatt.contract.WhoAnswer;
import org.berrywatt.server.Api;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** A phone that nobody knows yet, before and after it gets a pass. */
final class NewPhone {

    static final String TEAM = "/api/teams/{id}";
    static final String JOIN = "/api/access/join";

    private NewPhone() {}

    /** Who the pass in an answer says the phone is, whatever it may be offered to set up. */
    static WhoAnswer whoHolds(MvcTestResult answer, Api phone) {
        var pass = requireNonNull(answer.getResponse().getCookie("berrywatt-pass"));
        var who = phone.server()
                .get()
                .uri("/api/access")
                .cookie(new Cookie(pass.getName(), pass.getValue()))
                .exchange();
        var known = phone.answer(who, WhoAnswer.class);
        return new WhoAnswer(known.kind(), known.name(), known.teamId(), known.labDayId(), false, false);
    }
}
