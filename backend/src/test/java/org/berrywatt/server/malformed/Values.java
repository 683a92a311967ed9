package org.berrywatt.server.malformed;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.UUID;

/** Values for fields and addresses: good ones by their names, and bad ones of every kind. Seeded. */
final class Values {

    private static final String LONG_DIGITS = "9".repeat(5_000);

    /** As they stand in JSON; some are none. */
    private static final List<String> BAD = List.of(
            "null",
            "true",
            "[]",
            "{}",
            "[[]]",
            "[null]",
            "{\"a\":1}",
            "\"\"",
            "\" \"",
            "0",
            "-0.0",
            "-1",
            "1",
            "0.5",
            "1e999",
            "-1e999",
            "1e-999",
            "1e2147483647",
            "1e-2147483648",
            "\"1e2147483647\"",
            "\"1e999\"",
            "NaN",
            "-Infinity",
            "\"NaN\"",
            "\"Infinity\"",
            "2147483648",
            "-2147483649",
            "9223372036854775808",
            "9007199254740993",
            "007",
            "0x10",
            "1_000",
            "+1",
            ".5",
            "5.",
            LONG_DIGITS,
            "\"" + LONG_DIGITS + "\"",
            "\"" + "x".repeat(30_000) + "\"",
            "\"\\u0000\"",
            "\"a\\u0000b\"",
            "\"\\u0001\\u001b[31m\"",
            "\"\\n\\r\\n\"",
            "\"\u202Eevil\u202C\"",
            "\"\\u202e\"",
            "\"\u200B\u200D\uFEFF\"",
            "\"\\ud800\"",
            "\"\\udc00\\ud800\"",
            "\"\\uFFFF\"",
            "\"Z" + "\u0301".repeat(200) + "\"",
            "\"\uD83E\uDED0\uD83D\uDC69\u200D\uD83D\uDD2C\"",
            "\"<script>alert(1)</script>\"",
            "\"<img src=x onerror=alert(1)>\"",
            "\"'; drop table team; --\"",
            "\"${7*7}\"",
            "\"{{7*7}}\"",
            "\"%s%n%1$s\"",
            "\"{title}\"",
            "\"../../etc/passwd\"",
            "\"\u0663\u0661\"",
            "\"\uFF11\uFF12\"",
            "\"1,000.5,0\"",
            "\"--3\"",
            "\"3 mV mV\"",
            "\"15 x 15 x 15 mm\"",
            "\"2026-02-30\"",
            "\"+999999999-12-31\"",
            "\"-999999999-01-01\"",
            "\"0000-01-01\"",
            "\"5874898-01-01\"",
            "\"+1000000000-12-31T23:59:59.999999999Z\"",
            "\"-1000000000-01-01T00:00Z\"",
            "\"2026-11-25T25:61:61Z\"",
            "\"2026-11-25T10:15:30\"",
            "1e18",
            "\"00000000-0000-0000-0000-000000000000\"",
            "\"1-1-1-1-1\"",
            "\"not-a-uuid\"",
            "\"{00000000-0000-0000-0000-000000000000}\"",
            "{\"text\":null,\"unit\":null}",
            "{\"text\":\"3\",\"unit\":\"\\u0000\"}",
            "'3'",
            "undefined",
            "",
            "/* */ 3",
            "[1,2,3,4,5,6,7,8,9]",
            "\"\\x\"",
            "\"unended");

    private static final List<String> WORDS = List.of(
            "power",
            "dark",
            "light",
            "sweep",
            "toggles",
            "hibiscus",
            "450",
            "degC",
            "mV",
            "3",
            "0",
            "uA",
            "Wm2",
            "cm2",
            "C1",
            "sun",
            "luxMeter",
            "halogen",
            "window",
            "heat",
            "team",
            "efficiencyAsMeasured",
            "bestVerified",
            "medianOfDeclared",
            "bake",
            "refill",
            "dyeSource",
            "bakeTemperature",
            "15 x 15 mm",
            "washedOff",
            "number",
            "parameter",
            "Sloe");

    private static final Map<String, List<String>> BY_NAME = Map.ofEntries(
            Map.entry("kind", List.of("dark", "light", "sweep", "toggles", "refill", "burn", "cut")),
            Map.entry("unit", List.of("mV", "V", "uA", "mA", "cm2", "mm", "Wm2", "lx", "degC", "cm", "ohm")),
            Map.entry("text", List.of("3", "0,06", "312 mV", "15 x 15", "450", "hibiscus", "1 000")),
            Map.entry("stage", List.of("bake", "dye", "coat", "close")),
            Map.entry("zone", List.of("heat", "acid", "iodine")),
            Map.entry("lamp", List.of("sun", "halogen", "window", "coolLed")),
            Map.entry("source", List.of("sun", "halogen", "coolLed", "spectrum")),
            Map.entry("instrument", List.of("luxMeter", "referenceCell")),
            Map.entry("rule", List.of("medianOfDeclared", "bestVerified")),
            Map.entry("parameter", List.of("dyeSource", "bakeTemperature")),
            Map.entry("factor", List.of("dyeSource", "bakeTemperature")),
            Map.entry("scope", List.of("room", "team", "zone")));

    private final SplittableRandom random;
    private final Map<String, UUID> known;

    /** @param known ids that exist, by what they name: {@code "team"}, {@code "cell"} and so on */
    Values(SplittableRandom random, Map<String, UUID> known) {
        this.random = random;
        this.known = known;
    }

    String bad() {
        return one(BAD);
    }

    boolean chance(int in) {
        return random.nextInt(in) == 0;
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    <A> A one(List<A> of) {
        return of.get(random.nextInt(of.size()));
    }

    String word(String name) {
        return one(BY_NAME.getOrDefault(name, WORDS));
    }

    /** An id that exists, as the name tells, or a new one. */
    UUID id(String name) {
        return known.entrySet().stream()
                .filter(each -> name.startsWith(each.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .filter(found -> !chance(4))
                .orElseGet(() -> new UUID(random.nextLong(), random.nextLong()));
    }
}
