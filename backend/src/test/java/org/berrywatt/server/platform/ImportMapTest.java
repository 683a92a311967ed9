package org.berrywatt.server.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

/** The example of the HTML Living Standard, 8.1.5.2 Import maps, from memory: moment and lodash, bare and with a slash. */
class ImportMapTest {

    private static final ImportMap MAP = ImportMap.of("""
            <script type="importmap">{"imports": {
              "moment": "/webjars/moment/src/moment.js",
              "moment/": "/webjars/moment/src/",
              "moment/locale/": "/webjars/moment/dist/locale/",
              "lodash": "/webjars/lodash-es/lodash.js"
            }}</script>""");

    @Test
    void findsABareName() {
        assertThat(MAP.address("moment", "/core/a.js")).isEqualTo("/webjars/moment/src/moment.js");
    }

    @Test
    void findsAFileByItsLongestFolder() {
        assertThat(MAP.address("moment/locale/de.js", "/core/a.js")).isEqualTo("/webjars/moment/dist/locale/de.js");
    }

    @Test
    void findsANeighbourOfTheModule() {
        assertThat(MAP.address("../kit/b.js", "/core/a.js")).isEqualTo("/kit/b.js");
    }

    @Test
    void namesEachLibraryOnce() {
        assertThat(MAP.libraries()).containsExactly("lodash-es", "moment");
    }

    @Test
    void refusesAPageWithoutOne() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ImportMap.of("<p>"))
                .withMessage("this page has no import map: <p>");
    }
}
