package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.json.JsonMapper;

/** The rules of the house for the browser's side, read off its sources. */
class FrontendRulesTest {

    private static final Path WEB = Path.of("../frontend/web");
    private static final Map<String, String> SOURCES = sources();
    private static final Set<String> TEXTS = texts();

    private static final Pattern FETCH = Pattern.compile("(?<![.#\\w])fetch\\(");
    private static final Pattern INLINE_SCRIPT =
            Pattern.compile("<script(?![^>]*\\bsrc=)[^>]*>(.*?)</script>", Pattern.DOTALL);
    private static final Pattern IMPORT_MAP =
            Pattern.compile("<script type=\"importmap\">.*?</script>", Pattern.DOTALL);
    private static final String KEY = "(?:page|catalogue|standing|finding|problem|step|input)\\.[\\w.]*";
    private static final Pattern WHOLE_KEY = Pattern.compile("'(" + KEY + "\\w)'");
    private static final Pattern KEY_PREFIX = Pattern.compile("`(" + KEY + ")\\$\\{");

    @Test
    void onlyTheDoorToTheServerFetches() {
        assertThat(filesWith(FETCH)).containsExactly("core/http.js");
    }

    /** A phone's own clock may be an hour off; what it stamps goes by the server's. */
    @Test
    void onlyTheServersClockAsksTheDeviceForTheTime() {
        assertThat(filesWith(Pattern.compile("Date\\.now\\b|new Date\\(\\)"))).containsExactly("core/clock.js");
    }

    @ParameterizedTest
    @CsvSource({"lit,kit", "idb,outbox", "@stomp/stompjs,live", "chart.js,charts"})
    void onlyOneFolderKnowsEachLibrary(String library, String folder) {
        var imports = Pattern.compile("(?:from|import) '" + Pattern.quote(library) + "(?:/[^']*)?'");
        assertThat(filesWith(imports)).isNotEmpty().allMatch(file -> file.startsWith(folder + "/"));
    }

    @Test
    void noStyleStandsInAnAttribute() {
        assertThat(filesWith(Pattern.compile("\\bstyle="))).isEmpty();
    }

    @Test
    void noScriptStandsInAPageButTheImportMap() {
        assertThat(pages().values())
                .isNotEmpty()
                .allSatisfy(page -> assertThat(matches(INLINE_SCRIPT, page, 0))
                        .singleElement()
                        .asString()
                        .startsWith("<script type=\"importmap\">"));
    }

    @Test
    void everyPageHasTheSameImportMap() {
        assertThat(pages().values().stream()
                        .flatMap(page -> matches(IMPORT_MAP, page, 0).stream())
                        .distinct())
                .hasSize(1);
    }

    @Test
    void everyTextThatIsNamedIsInTheCatalogue() {
        assertThat(TEXTS).containsAll(named(WHOLE_KEY));
    }

    @Test
    void everyFamilyOfTextsThatIsNamedIsInTheCatalogue() {
        assertThat(named(KEY_PREFIX)).allSatisfy(prefix -> assertThat(TEXTS).anyMatch(key -> key.startsWith(prefix)));
    }

    @Test
    void everyTextOfAPageIsUsed() {
        var whole = named(WHOLE_KEY);
        var families = named(KEY_PREFIX);
        Predicate<String> used = key -> whole.contains(key) || families.stream().anyMatch(key::startsWith);
        assertThat(TEXTS.stream().filter(key -> key.startsWith("page."))).allMatch(used);
    }

    private static Map<String, String> pages() {
        return SOURCES.entrySet().stream()
                .filter(source -> source.getKey().endsWith(".html"))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private static List<String> filesWith(Pattern pattern) {
        return SOURCES.entrySet().stream()
                .filter(source -> pattern.matcher(source.getValue()).find())
                .map(Map.Entry::getKey)
                .toList();
    }

    private static Set<String> named(Pattern pattern) {
        return SOURCES.values().stream()
                .flatMap(source -> matches(pattern, source, 1).stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static List<String> matches(Pattern pattern, String text, int group) {
        return pattern.matcher(text).results().map(found -> found.group(group)).toList();
    }

    private static Map<String, String> sources() {
        try (Stream<Path> files = Files.walk(WEB)) {
            return files.filter(file -> file.toString().matches(".*\\.(js|html)"))
                    .collect(Collectors.toMap(
                            FrontendRulesTest::name, FrontendRulesTest::read, (a, b) -> a, TreeMap::new));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Set<String> texts() {
        var catalogue = JsonMapper.shared().readTree(read(WEB.resolve("texts/en.json")));
        return new TreeSet<>(catalogue.propertyNames());
    }

    private static String name(Path file) {
        return WEB.relativize(file).toString().replace('\\', '/');
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
