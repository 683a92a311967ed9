package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;

import jakarta.servlet.http.Cookie;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.Problem;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.access.Caller;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.security.core.authority.AuthorityUtils;
import org.springframework.security.web.authentication.preauth.PreAuthenticatedAuthenticationToken;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.json.JsonMapper;

/** The server's HTTP door as one caller uses it. */
public record Api(MockMvcTester server, JsonMapper json, Caller caller, String address) {

    private static final String XSRF = UUID.randomUUID().toString();

    public Api(MockMvcTester server, JsonMapper json, Caller caller) {
        this(server, json, caller, "127.0.0.1");
    }

    public Api as(Caller other) {
        return new Api(server, json, other, address);
    }

    /** The same from another network address. */
    public Api from(String other) {
        return new Api(server, json, caller, other);
    }

    public Api asTeam(UUID teamId, UUID labDayId) {
        return as(new Caller.TeamMember(teamId, labDayId));
    }

    public Api asNobody() {
        return as(new Caller.Nobody());
    }

    public MvcTestResult get(String uri, Object... variables) {
        return send(HttpMethod.GET, null, null, uri, variables);
    }

    public MvcTestResult put(Object body, String uri, Object... variables) {
        return send(HttpMethod.PUT, text(body), null, uri, variables);
    }

    public MvcTestResult putIfMatch(String tag, Object body, String uri, Object... variables) {
        return send(HttpMethod.PUT, text(body), tag, uri, variables);
    }

    public MvcTestResult post(Object body, String uri, Object... variables) {
        return send(HttpMethod.POST, text(body), null, uri, variables);
    }

    /** Sends a file. */
    public MvcTestResult upload(byte[] file, String mediaType, String uri, Object... variables) {
        return ready(HttpMethod.POST, uri, variables)
                .contentType(mediaType)
                .content(file)
                .exchange();
    }

    public <A> A answer(MvcTestResult result, Class<A> type) {
        assertThat(result).hasStatusOk();
        return json.readValue(body(result), type);
    }

    public <A> List<A> answers(MvcTestResult result, Class<A> type) {
        assertThat(result).hasStatusOk();
        return json.readerForListOf(type).readValue(body(result));
    }

    /** The problem detail of a refused request, after a look at its form. */
    public Problem problem(MvcTestResult result, ProblemCode code) {
        return problem(result, code.code());
    }

    /** The same by the code's name. */
    public Problem problem(MvcTestResult result, String code) {
        assertThat(result).hasContentTypeCompatibleWith(MediaType.APPLICATION_PROBLEM_JSON);
        var problem = json.readValue(body(result), Problem.class);
        assertThat(problem.code()).isEqualTo(code);
        assertThat(problem.status()).isEqualTo(result.getResponse().getStatus());
        assertThat(problem.detail()).doesNotContain("{").endsWith(".");
        return problem;
    }

    private MvcTestResult send(
            HttpMethod method, @Nullable String body, @Nullable String tag, String uri, Object... variables) {
        var request = ready(method, uri, variables);
        if (body != null) {
            request = request.contentType(MediaType.APPLICATION_JSON).content(body);
        }
        if (tag != null) {
            request = request.header("If-Match", tag);
        }
        return request.exchange();
    }

    private MockMvcTester.MockMvcRequestBuilder ready(HttpMethod method, String uri, Object... variables) {
        var request = server.method(method)
                .uri(uri, variables)
                .cookie(new Cookie("XSRF-TOKEN", XSRF))
                .header("X-XSRF-TOKEN", XSRF)
                .remoteAddress(address);
        return caller instanceof Caller.Nobody
                ? request
                : request.with(authentication(new PreAuthenticatedAuthenticationToken(
                        caller, "", AuthorityUtils.createAuthorityList("ROLE_" + role()))));
    }

    private String role() {
        return caller instanceof Caller.Teacher ? "TEACHER" : "TEAM";
    }

    private String text(Object body) {
        return body instanceof String text ? text : json.writeValueAsString(body);
    }

    private static String body(MvcTestResult result) {
        return new String(result.getResponse().getContentAsByteArray(), StandardCharsets.UTF_8);
    }
}
