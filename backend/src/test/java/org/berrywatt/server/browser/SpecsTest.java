package org.berrywatt.server.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Runs the specs of the browser's modules, {@code frontend/specs/*.spec.js}, in a browser; each sentence is a test. */
@ServerTest
class SpecsTest {

    private static final Path SPECS = Path.of("../frontend/specs");

    @LocalServerPort
    private int port;

    @TestFactory
    Stream<DynamicTest> browserModules() throws IOException {
        return results(specFiles()).stream().map(SpecsTest::asTest);
    }

    private static String specFiles() throws IOException {
        try (var files = Files.list(SPECS)) {
            var names = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".spec.js"))
                    .sorted()
                    .toList();
            assertThat(names).isNotEmpty();
            return String.join(",", names);
        }
    }

    @SuppressWarnings("unchecked")
    private List<Map<String, String>> results(String files) {
        try (var device = Device.laptop()) {
            device.open("http://localhost:" + port + "/specs/index.html#" + files);
            return (List<Map<String, String>>) device.answers("return window.specResults");
        }
    }

    private static DynamicTest asTest(Map<String, String> result) {
        return DynamicTest.dynamicTest(
                result.get("sentence"), () -> assertThat(result.get("failure")).isNull());
    }
}
