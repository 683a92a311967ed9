package org.berrywatt.server.access;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Headers are the examples of MDN Web Docs, "User-Agent header", from memory; that of the phone with a Samsung browser is in the
 * form its maker documents, from memory, too.
 */
class BrowserNameTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Mozilla/5.0 (X11; Linux x86_64; rv:42.0) Gecko/20100101 Firefox/42.0                                                                                            | Firefox, Linux
            Mozilla/5.0 (Macintosh; Intel Mac OS X x.y; rv:42.0) Gecko/20100101 Firefox/42.0                                                                                | Firefox, macOS
            Mozilla/5.0 (X11; Linux x86_64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/51.0.2704.103 Safari/537.36                                                       | Chrome, Linux
            Mozilla/5.0 (X11; Linux x86_64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/51.0.2704.106 Safari/537.36 OPR/38.0.2220.41                                      | Opera, Linux
            Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/91.0.4472.124 Safari/537.36 Edg/91.0.864.59                             | Edge, Windows
            Mozilla/5.0 (iPhone; CPU iPhone OS 13_5_1 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/13.1.1 Mobile/15E148 Safari/604.1                     | Safari, iPhone
            Mozilla/5.0 (Linux; Android 13; SAMSUNG SM-S918B) AppleWebKit/537.36 (KHTML, like Gecko) SamsungBrowser/21.0 Chrome/110.0.5481.154 Mobile Safari/537.36         | Samsung Internet, Android
            curl/7.64.1                                                                                                                                                     | ''
            """)
    void tellsABrowserBySystemAndByTheRarerNameItClaims(String userAgent, String name) {
        assertThat(BrowserName.of(userAgent)).isEqualTo(name);
    }

    @Test
    void passesNothingOnThatItDoesNotKnow() {
        assertThat(BrowserName.of(null)).isEmpty();
        assertThat(BrowserName.of("<b>Firefox/1</b> on my \u202ephone")).isEqualTo("Firefox");
    }
}
