package org.berrywatt.server.platform;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.core.io.ClassPathResource;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** The text catalogue that server and browser share: flat keys, sentences with {@code {name}} placeholders. */
public class Texts {

    private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\w+)}");
    private final Map<String, String> sentences;

    private Texts(Map<String, String> sentences) {
        this.sentences = sentences;
    }

    static Texts load() {
        try (var file = new ClassPathResource("static/texts/en.json").getInputStream()) {
            return new Texts(new JsonMapper().readValue(file, new TypeReference<>() {}));
        } catch (IOException missing) {
            throw new UncheckedIOException("the pages and their texts are not on the class path", missing);
        }
    }

    /** Whether the catalogue has this key. */
    public boolean has(String key) {
        return sentences.containsKey(key);
    }

    /** The sentence of a key; the key itself where the catalogue has none. */
    public String say(String key) {
        return say(key, Map.of());
    }

    /** The sentence of a key with its placeholders filled; a placeholder without a value stays as it is. */
    public String say(String key, Map<String, ?> values) {
        var sentence = sentences.getOrDefault(key, key);
        return PLACEHOLDER.matcher(sentence).replaceAll(found -> Matcher.quoteReplacement(fill(found.group(), values)));
    }

    private static String fill(String placeholder, Map<String, ?> values) {
        var name = placeholder.substring(1, placeholder.length() - 1);
        return Optional.<Object>ofNullable(values.get(name))
                .map(String::valueOf)
                .orElse(placeholder);
    }
}
