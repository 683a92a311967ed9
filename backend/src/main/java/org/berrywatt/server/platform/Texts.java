package org.berrywatt.server.platform;

import static java.util.Objects.requireNonNull;
import static java.util.stream.Collectors.toMap;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/**
 * The text catalogues that server and browser share, one file for each language: flat keys, sentences with {@code {name}}
 * placeholders. A sentence is said in the language of the request that is being answered, where there is one and it is
 * known, else in English.
 */
public class Texts {

    private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\w+)}");
    private static final String FILES = "classpath*:static/texts/*.json";
    private static final String FALLBACK = "en";

    private final Map<String, Map<String, String>> languages;

    private Texts(Map<String, Map<String, String>> languages) {
        this.languages = languages;
    }

    static Texts load() {
        try {
            var files = new PathMatchingResourcePatternResolver().getResources(FILES);
            return new Texts(Arrays.stream(files).collect(toMap(Texts::language, Texts::sentences)));
        } catch (IOException missing) {
            throw new UncheckedIOException("the pages and their texts are not on the class path", missing);
        }
    }

    /** Whether the catalogue has this key. */
    public boolean has(String key) {
        return english().containsKey(key);
    }

    /** The sentence of a key; the key itself where the catalogue has none. */
    public String say(String key) {
        return say(key, Map.of());
    }

    /** The sentence of a key with its placeholders filled; a placeholder without a value stays as it is. */
    public String say(String key, Map<String, ?> values) {
        var sentence = asked().getOrDefault(key, english().getOrDefault(key, key));
        return PLACEHOLDER.matcher(sentence).replaceAll(found -> Matcher.quoteReplacement(fill(found.group(), values)));
    }

    private Map<String, String> asked() {
        return Optional.ofNullable(LocaleContextHolder.getLocaleContext())
                .map(context -> context.getLocale())
                .map(locale -> languages.get(locale.getLanguage()))
                .orElseGet(this::english);
    }

    private Map<String, String> english() {
        return requireNonNull(languages.get(FALLBACK));
    }

    private static String language(Resource file) {
        return requireNonNull(file.getFilename()).replace(".json", "");
    }

    private static Map<String, String> sentences(Resource file) {
        try (var text = file.getInputStream()) {
            return new JsonMapper().readValue(text, new TypeReference<>() {});
        } catch (IOException unreadable) {
            throw new UncheckedIOException("the texts of " + file + " cannot be read", unreadable);
        }
    }

    private static String fill(String placeholder, Map<String, ?> values) {
        var name = placeholder.substring(1, placeholder.length() - 1);
        return Optional.<Object>ofNullable(values.get(name))
                .map(String::valueOf)
                .orElse(placeholder);
    }
}
