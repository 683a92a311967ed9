package org.berrywatt.server.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Forms of ECMA-262, 16.2.2 Imports and 16.2.3 Exports. */
class ModuleTextTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            import './a.js';                                   | async ($0) => {\\n;\\nreturn {  };\\n}
            import { b as c, d } from './a.js';                | async ($0) => { const { b: c, d } = $0;\\n;\\nreturn {  };\\n}
            import{b as c}from"./a.js";import{d}from"./b.js";  | async ($0, $1) => { const {b: c} = $0; const {d} = $1;\\n;;\\nreturn {  };\\n}
            import * as all from './a.js';                     | async ($0) => { const all = $0;\\n;\\nreturn {  };\\n}
            export * from './a.js';                            | async ($0) => {\\n;\\nreturn { ...$0 };\\n}
            export { b as c } from './a.js';                   | async ($0) => {\\n;\\nreturn { c: $0.b };\\n}
            const b = 1;export{b as c};                        | async () => {\\nconst b = 1;;\\nreturn { c: b };\\n}
            export const b = 1;                                | async () => {\\nconst b = 1;\\nreturn { b: b };\\n}
            export const { b, c: D } = it;                     | async () => {\\nconst { b, c: D } = it;\\nreturn { D: D, b: b };\\n}
            export class B extends A {}                        | async () => {\\nclass B extends A {}\\nreturn { B: B };\\n}
            export async function b() {}                       | async () => {\\nasync function b() {}\\nreturn { b: b };\\n}
            export function* b() {}                            | async () => {\\nfunction* b() {}\\nreturn { b: b };\\n}
            """)
    void becomesAFunctionOfItsImportsThatGivesItsExports(String module, String function) {
        assertThat(new ModuleText(module).asFunction()).isEqualTo(function.replace("\\n", "\n"));
    }

    @Test
    void knowsWhatItWantsOfEachModuleAndWhatItGives() {
        var module = new ModuleText("""
                import { a as b } from './x.js';
                import './y.js';
                export { c } from './x.js';
                export * from './z.js';
                export const d = b;
                """);
        assertThat(module.sources()).containsExactly("./x.js", "./y.js", "./z.js");
        assertThat(module.wantedFrom("./x.js")).containsExactlyInAnyOrder("a", "c");
        assertThat(module.wantedFrom("./y.js")).isEmpty();
        assertThat(module.exports()).containsExactly("c", "d");
        assertThat(module.passedOnWhole()).containsExactly("./z.js");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/** import { a } from './a.js'; */",
                "const reimport = 'export { a }';",
                "import('./a.js');",
                "import.meta.url;"
            })
    void leavesEverythingElseAsItIs(String module) {
        assertThat(new ModuleText(module).asFunction()).contains("\n" + module + "\n");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "export default 1;",
                "import a from './a.js';",
                "import a, { b } from './a.js';",
                "export * as a from './a.js';",
                "import json from './a.json' with { type: 'json' };"
            })
    void refusesFormsThatItDoesNotKnow(String module) {
        assertThatThrownBy(() -> new ModuleText(module))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a module cannot be put together with others for: " + module);
    }

    @Test
    void leavesOutWhereALibraryWasWritten() {
        assertThat(new ModuleText("const a = 1;\n//# sourceMappingURL=index.js.map").asFunction())
                .doesNotContain("sourceMappingURL");
    }
}
