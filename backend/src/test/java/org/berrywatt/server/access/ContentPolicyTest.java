package org.berrywatt.server.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ContentPolicyTest {

    /** The example of W3C Content Security Policy Level 2, section 7.16.2: {@code alert('Hello, world.');}. */
    @Test
    void namesTheImportMapByItsHash() {
        assertThat(ContentPolicy.of(Stream.of("<script type=\"importmap\">alert('Hello, world.');</script>")))
                .contains("script-src 'self' 'sha256-qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng=';");
    }

    @Test
    void allPagesCarryTheSameImportMap() throws IOException {
        assertThat(ContentPolicy.ofAllPages().split("sha256-", -1)).hasSize(2);
    }

    @Test
    void allowsNoOtherInlineScriptAndNoInlineStyle() throws IOException {
        assertThat(ContentPolicy.ofAllPages()).startsWith("default-src 'none';").doesNotContain("unsafe");
    }
}
