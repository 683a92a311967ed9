package org.berrywatt.server.access;

import static org.assertj.core.api.Assertions.assertThat;

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
    void namesAMapThatManyPagesCarryOnce() {
        var page = "<script type=\"importmap\">{}</script>";
        assertThat(ContentPolicy.of(Stream.of(page, page)).split("sha256-", -1)).hasSize(2);
    }

    @Test
    void allowsNoOtherInlineScriptAndNoInlineStyle() {
        assertThat(ContentPolicy.of(Stream.of("<script>alert('Hello, world.');</script>")))
                .startsWith("default-src 'none'; script-src 'self'; style-src 'self';")
                .doesNotContain("unsafe");
    }
}
