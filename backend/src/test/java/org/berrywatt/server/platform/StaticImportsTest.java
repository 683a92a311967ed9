package org.berrywatt.server.platform;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Forms of ECMA-262, 16.2.2 Imports and 16.2.3 Exports. */
class StaticImportsTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "import './a.js';",
                "import \"./a.js\";",
                "import a from './a.js';",
                "import * as a from './a.js';",
                "import a, { b as $c } from './a.js';",
                "import {\n  a,\n  b,\n} from './a.js';",
                "export * from './a.js';",
                "export * as a from './a.js';",
                "export { a as b } from './a.js';",
                "import{a as b}from\"./a.js\";",
                "export*from\"./a.js\";",
                "/** Words. */import'./a.js'",
                "const a=1;import'./a.js'"
            })
    void findsWhatAModuleImports(String module) {
        assertThat(StaticImports.of(module)).containsExactly("./a.js");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "const a = await import('./a.js');",
                "export const from = './a.js';",
                "export default './a.js';",
                "// import './a.js';",
                "/**\n * import './a.js'\n */",
                "new URL('./a.js', import.meta.url)",
                "const reimport = './a.js';"
            })
    void passesOverWhatIsNotImportedBeforeTheModuleRuns(String module) {
        assertThat(StaticImports.of(module)).isEmpty();
    }

    @Test
    void keepsTheirOrder() {
        assertThat(StaticImports.of("import './b.js';import './a.js';\nexport { c } from './c.js';"))
                .containsExactly("./b.js", "./a.js", "./c.js");
    }
}
