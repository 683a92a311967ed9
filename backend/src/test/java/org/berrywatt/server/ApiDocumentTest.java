package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** docs/api.md says what the server says of itself. */
@ServerTest
class ApiDocumentTest {

    private static final Path WRITTEN = Path.of("target/api.md");

    private final JsonNode description;

    ApiDocumentTest(@Autowired MockMvcTester server, @Autowired JsonMapper json) throws IOException {
        description = json.readTree(
                server.get().uri("/v3/api-docs").exchange().getResponse().getContentAsString());
    }

    @Test
    void isTheDocumentThatIsKept() throws IOException {
        var text = new ApiDocument(description).text();
        Files.writeString(WRITTEN, text);
        assertThat(Path.of("../docs/api.md"))
                .as("what deploy/api.sh writes")
                .content()
                .isEqualTo(text);
    }

    @Test
    void explainsWhatTravels() {
        assertThat(description
                        .at("/components/schemas/ReadingRequest/properties/kind/description")
                        .asString(""))
                .contains("covered cell");
    }
}
