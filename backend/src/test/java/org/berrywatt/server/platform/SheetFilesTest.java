package org.berrywatt.server.platform;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class SheetFilesTest {

    private static final Map<String, String> SHEETS =
            Map.of("/css/a.css", "a { top: 0 }\n", "/css/b.css", "b { top: 0 }\n", "/css/c.css", "c { top: 0 }\n");

    private final SheetFiles files = new SheetFiles(SHEETS::get);

    @Test
    void putsNeighboursTogetherInTheirOrder() {
        var dressed = files.dress("""
                <link rel="icon" href="/icons/i.svg">
                <link rel="stylesheet" href="/css/b.css">
                <link rel="stylesheet" href="/css/a.css">
                </head>
                """, "page", "/together/");
        assertThat(dressed.page()).isEqualTo("""
                <link rel="icon" href="/icons/i.svg">
                <link rel="stylesheet" href="/together/page.css">
                </head>
                """);
        assertThat(dressed.sheets()).isEqualTo(Map.of("page.css", "b { top: 0 }\n\na { top: 0 }\n"));
    }

    @Test
    void keepsWhatASheetIsFor() {
        var link = "<link rel=\"stylesheet\" href=\"/css/a.css\" media=\"(prefers-color-scheme: dark)\">";
        assertThat(files.dress(link, "page", "/").sheets())
                .isEqualTo(Map.of("page.css", "@media (prefers-color-scheme: dark) {\na { top: 0 }\n}\n"));
    }

    @Test
    void leavesASheetThatSomebodySwitchesAtItsPlace() {
        var dressed = files.dress("""
                <link rel="stylesheet" href="/css/a.css">
                <link rel="stylesheet" href="/css/b.css" id="b">
                <link rel="stylesheet" href="/css/c.css">
                """, "page", "/");
        assertThat(dressed.page()).isEqualTo("""
                <link rel="stylesheet" href="/page.css">
                <link rel="stylesheet" href="/css/b.css" id="b">
                <link rel="stylesheet" href="/page-2.css">
                """);
        assertThat(dressed.sheets()).containsOnlyKeys("page.css", "page-2.css");
    }
}
