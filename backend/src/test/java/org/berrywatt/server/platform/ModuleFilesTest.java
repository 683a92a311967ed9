package org.berrywatt.server.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ModuleFilesTest {

    private static final Map<String, String> FILES = Map.of(
            "/core/parts.js", "export const [add, at, use] = loader;\n",
            "/core/early.js", "import './texts.js';",
            "/core/texts.js", "export const t = import.meta.url;",
            "/kit/kit.js", "import { t } from '../core/texts.js';\nexport const html = t;",
            "/pages/a.js",
                    "import { html } from '../kit/kit.js';\nimport { Chart } from 'chart.js';\nimport('../forms/b.js');",
            "/forms/b.js", "import { html } from '../kit/kit.js';\nimport('./c.js');",
            "/forms/c.js", "export const c = 1;",
            "/webjars/chart.js/dist/chart.js", "");

    private final Map<String, String> sources = new HashMap<>(FILES);
    private final ImportMap map = new ImportMap(Map.of("chart.js", "/webjars/chart.js/dist/chart.js"));

    @Test
    void putsEachModuleIntoOneFileOnly() {
        var files = files();
        assertThat(files).containsOnlyKeys("early.js", "kit.js", "a.js", "a.later.js");
        assertThat(files.get("early.js")).startsWith(FILES.get("/core/parts.js"));
        assertThat(modulesOf("early.js")).containsExactly("/core/texts.js", "/core/early.js");
        assertThat(modulesOf("kit.js")).containsExactly("/kit/kit.js");
        assertThat(modulesOf("a.js")).containsExactly("/pages/a.js");
        assertThat(modulesOf("a.later.js")).containsExactly("/forms/b.js", "/forms/c.js");
    }

    @Test
    void runsThePagesModulesAndLeavesTheOthersUntilTheyAreNeeded() {
        assertThat(files().get("early.js")).endsWith("$use('/core/early.js');\n");
        assertThat(files().get("a.js"))
                .contains("import './kit.js';", "again => import('./a.later.js' + again)")
                .endsWith("await $use('/pages/a.js');\n");
        assertThat(files().get("kit.js")).endsWith("]\n});\n");
    }

    @Test
    void leavesTheLibraryOfTheChartsApart() {
        assertThat(files().get("a.js")).contains("'/pages/a.js': [['/kit/kit.js', 'chart.js'],");
        assertThat(new ModuleFiles(sources::get, map).apart("/pages/a.js"))
                .containsExactly("/webjars/chart.js/dist/chart.js");
    }

    @Test
    void namesAModulesOwnAddressAndThoseThatItAsksForLater() {
        assertThat(files().get("early.js")).contains("const t = $at('/core/texts.js');");
        assertThat(files().get("a.js")).contains("$use('/forms/b.js');");
    }

    @Test
    void refusesModulesThatImportEachOther() {
        sources.put("/core/texts.js", "import './early.js';\nexport const t = 1;");
        assertThatThrownBy(this::files)
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("modules import each other: /core/texts.js and /core/early.js");
    }

    @Test
    void refusesAModuleThatWantsWhatAnotherDoesNotExport() {
        sources.put("/core/texts.js", "export const s = 1;");
        assertThatThrownBy(this::files)
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("/kit/kit.js wants [t] of /core/texts.js, which has none");
    }

    private Map<String, String> files() {
        return new ModuleFiles(sources::get, map).of("/pages/a.js");
    }

    private List<String> modulesOf(String file) {
        return Pattern.compile("^'([^']+)': \\[", Pattern.MULTILINE)
                .matcher(String.valueOf(files().get(file)))
                .results()
                .map(found -> found.group(1))
                .toList();
    }
}
