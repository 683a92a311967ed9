package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The bill of materials in the jar (CycloneDX) names what is beside it. */
class BillOfMaterialsIT {

    private static final Path LIBRARIES = ServerProcess.JAR.resolveSibling("lib");

    @Test
    void namesEveryLibraryWithItsVersion() throws IOException {
        assertThat(libraries()).isNotEmpty().isSubsetOf(named());
    }

    @Test
    void tellsThePackageUrlAndTheDigestOfEveryLibrary() throws IOException {
        assertThat(components()).allSatisfy(component -> {
            assertThat(component.path("purl").asString("")).startsWith("pkg:maven/");
            assertThat(component.path("hashes").findValuesAsString("alg")).contains("SHA-256");
        });
    }

    private static Set<String> libraries() throws IOException {
        try (var files = Files.list(LIBRARIES)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> !name.startsWith("berrywatt-"))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    /** File names as Maven makes them: name, version, and a classifier where there is one. */
    private static Set<String> named() throws IOException {
        return components().stream().map(BillOfMaterialsIT::fileName).collect(Collectors.toCollection(TreeSet::new));
    }

    private static String fileName(JsonNode component) {
        return component.get("name").asString() + "-" + component.get("version").asString()
                + classifier(component.get("purl").asString()) + ".jar";
    }

    private static String classifier(String packageUrl) {
        return packageUrl.contains("classifier=") ? packageUrl.replaceFirst(".*classifier=([^&]*).*", "-$1") : "";
    }

    private static List<JsonNode> components() throws IOException {
        try (var jar = new JarFile(ServerProcess.JAR.toFile());
                var bill = jar.getInputStream(jar.getEntry("META-INF/sbom/application.cdx.json"))) {
            return List.copyOf(new JsonMapper().readTree(bill).get("components").values());
        }
    }
}
