package org.berrywatt.server.calculator;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.berrywatt.contract.Problem;
import org.berrywatt.server.Api;
import org.berrywatt.server.access.Caller;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The calculator as somebody without a pass or a token calls it. */
record Calculator(MockMvcTester server, JsonMapper json) {

    JsonNode answer(String door, Object body) {
        var result = post(door, body);
        assertThat(result).hasStatusOk();
        return json.readTree(text(result));
    }

    Problem problem(String door, Object body, String code) {
        return new Api(server, json, new Caller.Nobody()).problem(post(door, body), code);
    }

    MvcTestResult post(String door, Object body) {
        return postFrom("127.0.0.1", door, body);
    }

    MvcTestResult postFrom(String address, String door, Object body) {
        return server.post()
                .uri("/api/calculations/" + door)
                .remoteAddress(address)
                .contentType(MediaType.APPLICATION_JSON)
                .content(body instanceof String text ? text : json.writeValueAsString(body))
                .exchange();
    }

    static String text(MvcTestResult result) {
        return new String(result.getResponse().getContentAsByteArray(), StandardCharsets.UTF_8);
    }
}
