package org.neckgeom.examples.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ScriptShellTest {

    private static ScriptShell shell;

    @BeforeAll
    static void open() throws ScriptFailed {
        shell = TestShell.open();
    }

    @AfterAll
    static void close() {
        shell.close();
    }

    @BeforeEach
    void forget() {
        shell.forget();
    }

    @Test
    void run_printsWhatTheScriptPrints() throws Exception {
        assertThat(printed("println(1 + 1);\nprintln();\nprintln(mm(44.45));\n"))
                .isEqualTo("2\n\n44.45 mm\n");
    }

    @Test
    void run_readsASentenceThatGoesOnInTheNextLine() throws Exception {
        String script = """
                #!/usr/bin/env neckshell
                var b = new StringBuilder("a;") // a comment; with a semicolon
                    // and one between
                    .append("//b")              /* another */
                    .append("c");
                println(b);
                println(List.of(1,
                    2))
                int n = 3
                    + 4
                println(n)
                """;

        assertThat(printed(script)).isEqualTo("a;//bc\n[1, 2]\n7\n");
    }

    @Test
    void run_readsBlocksMethodsAndSeveralSentencesOnALine() throws Exception {
        String script = """
                if (1 > 2) {
                    println("no");
                }
                else {
                    println("yes");
                }
                for (int i = 0; i < 2; i++)
                    println(i);
                int f(int x) { return g(x); }
                int g(int x) { return x + 1; }
                println(f(1)); println(f(2));
                record P(int x) {
                    int twice() { return 2 * x; }
                }
                /* a
                   block */ println(new P(4).twice())
                println(\"""
                    two
                    lines\""");
                """;

        assertThat(printed(script)).isEqualTo("yes\n0\n1\n2\n3\n8\ntwo\nlines\n");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "println(1);\\n\\nint z = \"a\";      | s.jsh:3: does not compile: incompatible types | int z = \"a\";",
                "var a = 1;\\nprintln(nothing);      | s.jsh:2: does not compile: cannot find symbol | println(nothing);",
                "List.of(1).get(7);                  | s.jsh:1: | List.of(1).get(7);",
                "// x\\n\\nmm(0.0 / 0.0)             | s.jsh:3: Refusal: an amount must be | mm(0.0 / 0.0)",
                "println(1);\\nprintln(              | s.jsh:2: the script ends in the middle of a sentence | println(",
                "if (true)                           | s.jsh:1: the script ends in the middle of a sentence | if (true)",
                "int f() { return g(); }             | s.jsh:1: refers to something that is not declared | int f()",
                "int f() { return g(); }\\n/exit     | s.jsh:1: refers to something that is not declared | int f()",
                "println(1);\\n/open other.jsh       | s.jsh:2: a script may use the command /exit alone | /open",
                "class A {\\n  int x = \"a\";\\n}    | s.jsh:2: does not compile: incompatible types | int x = \"a\";",
                "void f() { throw new Error(\"x\"); }\\nf() | s.jsh:2: Error: x | f()"
            })
    void run_stopsAtTheFirstMistakeAndNamesItsLine(String script, String start, String line) {
        assertThatThrownBy(() -> printed(script.replace("\\n", "\n")))
                .isInstanceOf(ScriptFailed.class)
                .hasMessageStartingWith(start)
                .hasMessageContaining("\n    " + line);
    }

    @Test
    void run_runsNothingAfterTheMistake() throws Exception {
        String printed = Printed.by(() -> assertThatThrownBy(() -> shell.run("s.jsh", "println(1);\nx();\nprintln(2);"))
                .isInstanceOf(ScriptFailed.class));

        assertThat(printed).isEqualTo("1\n");
    }

    @Test
    void run_endsAtExitWithItsNumber() throws Exception {
        assertThat(shell.run("s.jsh", "int a = 1;\n/exit 3\nint b = \"x\";")).isEqualTo(3);
        assertThat(shell.run("s.jsh", "/exit")).isZero();
        assertThat(shell.run("s.jsh", "// nothing\n")).isZero();
    }

    /** A process ends with a number of eight bits (POSIX, exit): 256 would read as 0, which is well done. */
    @ParameterizedTest
    @ValueSource(strings = {"256", "1000", "99999999999999999999", "-1", "x"})
    void run_refusesAnExitThatNoProcessEndsWith(String number) throws Exception {
        assertThat(shell.run("s.jsh", "/exit 255")).isEqualTo(255);
        assertThatThrownBy(() -> shell.run("s.jsh", "int a = 1;\n/exit " + number))
                .isInstanceOf(ScriptFailed.class)
                .hasMessage("s.jsh:2: a script may use the command /exit alone, or with a whole number from 0 to 255\n"
                        + "    /exit " + number);
    }

    /** Some editors begin a UTF-8 text with a byte-order mark (Unicode, 23.8). */
    @Test
    void run_readsAScriptWithAByteOrderMark() throws Exception {
        assertThat(printed("\uFEFF// first\nprintln(1);\n")).isEqualTo("1\n");
        assertThat(printed("\uFEFFprintln(2);")).isEqualTo("2\n");
        assertThatThrownBy(() -> printed("\uFEFF\nx();\n")).hasMessageStartingWith("s.jsh:2: ");
    }

    @Test
    void forget_leavesNothingOfTheScriptBeforeButKeepsTheStartup() throws Exception {
        printed(
                "import javax.xml.XMLConstants;\nvar a = 1;\nint f() { return a; }\nrecord P(int x) {}\nprintln(f() + new P(2).x());");
        shell.forget();

        for (String gone :
                new String[] {"println(a)", "println(f())", "println(new P(1))", "println(XMLConstants.XML_NS_URI)"}) {
            assertThatThrownBy(() -> printed(gone)).as(gone).hasMessageContaining("cannot find symbol");
        }
        assertThat(printed("var a = \"other\"; println(a); println(mm(1));")).isEqualTo("other\n1 mm\n");
    }

    private String printed(String script) throws Exception {
        return Printed.by(() -> shell.run("s.jsh", script));
    }
}
