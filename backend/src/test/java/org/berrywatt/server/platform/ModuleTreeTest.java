package org.berrywatt.server.platform;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ModuleTreeTest {

    private static final Map<String, String> FILES = Map.of(
            "/pages/a.js", "import '../kit/b.js';\nimport 'lib';",
            "/kit/b.js", "import './c.js';",
            "/kit/c.js", "import './b.js';\nimport 'lib';",
            "/pages/d.js", "await import('./e.js');",
            "/pages/e.js", "import './a.js';\nawait import(\"./f.js\");\nawait import(name);",
            "/pages/f.js", "",
            "/webjars/lib/index.js", "");

    private final ModuleTree tree = new ModuleTree(FILES::get, new ImportMap(Map.of("lib", "/webjars/lib/index.js")));

    @Test
    void namesEachModuleOnceBehindWhatItImportsThoughSomeImportEachOther() {
        assertThat(tree.needed(List.of("/pages/a.js")))
                .containsExactly("/webjars/lib/index.js", "/kit/c.js", "/kit/b.js", "/pages/a.js");
    }

    @Test
    void beginsWithWhatIsAskedForFirst() {
        assertThat(tree.needed(List.of("/kit/b.js", "/pages/a.js")))
                .endsWith("/pages/a.js")
                .hasSize(4);
    }

    @Test
    void followsWhatIsImportedWhileModulesRun() {
        assertThat(tree.needed(List.of("/pages/d.js"))).containsExactly("/pages/d.js");
        assertThat(tree.neededLater(List.of("/pages/d.js")))
                .contains("/kit/b.js", "/pages/a.js", "/pages/e.js", "/pages/f.js")
                .doesNotContain("/pages/d.js");
        assertThat(tree.neededLater(List.of("/pages/a.js"))).isEmpty();
    }
}
