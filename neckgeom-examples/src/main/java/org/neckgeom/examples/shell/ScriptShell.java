package org.neckgeom.examples.shell;

import java.io.File;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import jdk.jshell.Diag;
import jdk.jshell.EvalException;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

/**
 * A JShell in this JVM that stops a script at the first thing wrong with it.
 *
 * <p>What a script prints goes to {@code System.out}. Of JShell's commands a script may use {@code /exit} alone, with
 * or without a whole number from 0 to 255. One shell runs one script at a time; close it when done.
 */
public final class ScriptShell implements AutoCloseable {

    /** What JShell itself imports before JDK 25; from 25 on it is the one line {@code import module java.base}. */
    private static final List<String> CLASSIC_IMPORTS = List.of(
            "java.io",
            "java.math",
            "java.net",
            "java.nio.file",
            "java.util",
            "java.util.concurrent",
            "java.util.function",
            "java.util.prefs",
            "java.util.regex",
            "java.util.stream");

    /** How a line starts that goes on with the one before it. */
    private static final Pattern GOES_ON =
            Pattern.compile("\\.[^\\d]|\\+(?!\\+)|-(?!-)|[*%?:=<>]|/[^/*a-z]|&&|\\|\\||(else|catch|finally)\\b");

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    /** The greatest status that a process can end with. */
    private static final int MOST_STATUS = 255;

    private static final int FIRST_WITH_MODULE_IMPORT = 25;

    private final JShell shell;
    private Set<Snippet> kept = Set.of();

    private ScriptShell(JShell shell) {
        this.shell = shell;
    }

    /**
     * {@return a shell with JShell's usual imports; open}
     *
     * @param classPath class path of the scripts, entries parted as the platform parts them
     */
    public static ScriptShell open(String classPath) {
        JShell shell = JShell.builder().executionEngine("local").build();
        Pattern.compile(Pattern.quote(File.pathSeparator))
                .splitAsStream(classPath)
                .filter(entry -> !entry.isEmpty())
                .forEach(shell::addToClasspath);
        ScriptShell opened = new ScriptShell(shell);
        opened.importDefaults();
        return opened;
    }

    /** {@return the packages whose names every JShell user has at hand; the packages JShell imports before JDK 25} */
    static List<String> classicImports() {
        return CLASSIC_IMPORTS;
    }

    private void importDefaults() {
        String imports = Runtime.version().feature() >= FIRST_WITH_MODULE_IMPORT
                ? "import module java.base;"
                : CLASSIC_IMPORTS.stream().map(name -> "import " + name + ".*;").collect(Collectors.joining("\n"));
        try {
            run("JShell's own imports", imports);
        } catch (ScriptFailed impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /**
     * Runs a script to its end or to its {@code /exit}.
     *
     * @param name the script's name, for messages
     * @param text its text
     * @return the status to end with: 0, or the number after {@code /exit}
     * @throws ScriptFailed at the first line that does not compile or throws
     */
    public int run(String name, String text) throws ScriptFailed {
        String bare = text.startsWith(BYTE_ORDER_MARK) ? text.substring(BYTE_ORDER_MARK.length()) : text;
        Script script = new Script(Objects.requireNonNull(name, "name"), bare);
        String rest = bare;
        while (true) {
            rest = Script.afterBlanks(rest);
            if (rest.isEmpty()) {
                break;
            }
            if (rest.startsWith("/") && !rest.startsWith("//") && !rest.startsWith("/*")) {
                return exitStatus(script, rest);
            }
            int end = sentenceEnd(rest);
            CompletionInfo sentence = shell.sourceCodeAnalysis().analyzeCompletion(rest.substring(0, end));
            if (isOpen(sentence.completeness())) {
                throw script.failure(rest, "the script ends in the middle of a sentence");
            }
            evaluate(script, rest, sentence.source());
            rest = sentence.remaining() + rest.substring(end);
        }
        refuseUnresolved(script);
        return 0;
    }

    /** Keeps what has been declared so far through every {@link #forget}. */
    void keep() {
        kept = shell.snippets().collect(Collectors.toUnmodifiableSet());
    }

    /** Forgets everything declared since {@link #keep}: the next script starts as in a shell of its own. */
    void forget() {
        shell.snippets()
                .filter(snippet ->
                        !kept.contains(snippet) && shell.status(snippet).isActive())
                .toList()
                .forEach(shell::drop);
    }

    /**
     * Where the first sentence ends: after the first line that completes it, a forgotten semicolon being no matter as
     * at JShell's prompt, unless the next line visibly goes on with it.
     */
    private int sentenceEnd(String rest) {
        int end = 0;
        while (end < rest.length()) {
            int feed = rest.indexOf('\n', end);
            end = feed < 0 ? rest.length() : feed + 1;
            Completeness so = shell.sourceCodeAnalysis()
                    .analyzeCompletion(rest.substring(0, end))
                    .completeness();
            boolean goesOn = so != Completeness.UNKNOWN
                    && GOES_ON.matcher(Script.afterBlanks(rest.substring(end))).lookingAt()
                    && !Script.endsWithSemicolon(rest.substring(0, end));
            if (!isOpen(so) && !goesOn) {
                break;
            }
        }
        return end;
    }

    private static boolean isOpen(Completeness so) {
        return switch (so) {
            case DEFINITELY_INCOMPLETE, CONSIDERED_INCOMPLETE, EMPTY -> true;
            case COMPLETE, COMPLETE_WITH_SEMI, UNKNOWN -> false;
        };
    }

    private void evaluate(Script script, String rest, String source) throws ScriptFailed {
        for (SnippetEvent event : shell.eval(source)) {
            if (event.causeSnippet() != null) {
                continue; // an earlier snippet that changed because of this one
            }
            if (event.status() == Snippet.Status.REJECTED) {
                throw rejected(script, rest, event.snippet());
            }
            if (event.exception() != null) {
                throw script.failure(rest, thrown(event.exception()));
            }
        }
    }

    private ScriptFailed rejected(Script script, String rest, Snippet snippet) {
        Diag first =
                shell.diagnostics(snippet).filter(Diag::isError).findFirst().orElse(null);
        if (first == null) {
            return script.failure(rest, "does not compile");
        }
        int at = (int) Math.max(0, Math.min(first.getPosition(), rest.length()));
        return script.failure(rest.substring(at), "does not compile: " + first.getMessage(Locale.ROOT));
    }

    private static String thrown(Exception thrown) {
        String name = thrown instanceof EvalException inner
                ? inner.getExceptionClassName()
                : thrown.getClass().getName();
        String simple = name.substring(name.lastIndexOf('.') + 1);
        return thrown.getMessage() == null ? simple : simple + ": " + thrown.getMessage();
    }

    /** A method that refers to something never declared compiles in JShell; in a script it is a mistake. */
    private void refuseUnresolved(Script script) throws ScriptFailed {
        for (Snippet snippet : shell.snippets().toList()) {
            switch (shell.status(snippet)) {
                case RECOVERABLE_DEFINED, RECOVERABLE_NOT_DEFINED ->
                    throw script.failure(snippet.source(), "refers to something that is not declared anywhere");
                default -> {}
            }
        }
    }

    private int exitStatus(Script script, String rest) throws ScriptFailed {
        String command = rest.lines().findFirst().orElse("").strip();
        if (command.equals("/exit")) {
            refuseUnresolved(script);
            return 0;
        }
        if (command.matches("/exit \\d{1,3}")) {
            int status = Integer.parseInt(command.substring("/exit ".length()));
            if (status <= MOST_STATUS) {
                return status;
            }
        }
        throw script.failure(
                rest, "a script may use the command /exit alone, or with a whole number from 0 to " + MOST_STATUS);
    }

    @Override
    public void close() {
        shell.close();
    }
}
