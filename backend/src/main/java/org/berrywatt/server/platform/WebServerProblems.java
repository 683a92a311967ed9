package org.berrywatt.server.platform;

import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.jetty.servlet.JettyServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** Requests so malformed that the web server itself turns them away get the same kind of answer. */
@Component
class WebServerProblems implements WebServerFactoryCustomizer<JettyServletWebServerFactory> {

    private final ProblemSentences sentences;
    private final JsonMapper json;

    WebServerProblems(ProblemSentences sentences, JsonMapper json) {
        this.sentences = sentences;
        this.json = json;
    }

    @Override
    public void customize(JettyServletWebServerFactory factory) {
        factory.addServerCustomizers(server -> server.setErrorHandler(new Answer()));
    }

    private final class Answer extends ErrorHandler {

        @Override
        protected void generateResponse(
                Request request,
                Response response,
                int status,
                @Nullable String message,
                @Nullable Throwable cause,
                Callback done) {
            var problem = sentences.of(Unreadable.refusal(status));
            response.setStatus(problem.status());
            EarlyAnswer.HEADERS.forEach((name, value) -> response.getHeaders().put(name, value));
            response.getHeaders().put(HttpHeader.CONTENT_TYPE, MediaType.APPLICATION_PROBLEM_JSON_VALUE);
            Content.Sink.write(response, true, json.writeValueAsString(problem), done);
        }
    }
}
