package org.neckgeom.examples;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.neckgeom.examples.file.FileRefused;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.fault.Refusal;
import org.neckgeom.page.Document;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.Job;
import org.neckgeom.text.Words;

/**
 * The main job: reads a neck file and prints the plan.
 *
 * <p>{@code mvn -q compile exec:java} plans the octave mandolin that comes with the examples; {@code -Dexec.args="FILE"}
 * plans another. Ends with 0 when it did what was asked, 1 when the file can't be used (then nothing is printed or written
 * but what is wrong with it, on standard error), 2 when the command line can't be understood.
 */
public final class PlanANeck {

    private static final int DONE = 0;
    private static final int REFUSED = 1;
    private static final int NOT_UNDERSTOOD = 2;

    private static final String HELP = """
            Plans a neck: settings, depths of cut, the lines of the joints, and a verdict.

              plan-a-neck                        the octave mandolin of the examples: verdict, and what to do now
              plan-a-neck my-neck.yaml           your neck; --full the whole plan, --section NAME one part of it,
                                                 --next the step at hand, --card OPERATION a card to hang up
              plan-a-neck --bench my-neck.yaml   asks for the readings at the bench and keeps them in the file
              plan-a-neck --serve my-neck.yaml   the same in a browser; --address 192.0.2.7 opens it to a phone
              plan-a-neck --check my-neck.yaml   lists every error in the file
              plan-a-neck --all sheets           writes all that follows into a folder, made if it is not there
              plan-a-neck --cards sheets         writes a card of each operation to print; --landscape: long side across
              plan-a-neck --check-set sheets     checks that the files of such a folder belong together
              plan-a-neck --html plan.html       writes the plan with drawings, as a page to look at and print
              plan-a-neck --svg neck.svg         writes templates at full size; also --dxf neck.dxf for CAD,
                                                 --pdf neck.pdf or --pages neck.html in pages of --paper A4 or letter
              plan-a-neck --json neck.json       writes the plan as data; also --frets and --stations neck.csv as tables
              plan-a-neck --obj neck.obj         writes a closed mesh of every piece; --stl neck.stl one file a piece;
                                                 --channel-path neck.csv where the cutter runs, as points
              plan-a-neck --log shop.jsonl       plans with the shop's own figures; --add-to-log shop.jsonl adds to them
              plan-a-neck --units fractions      any of these with lengths in mm, inch or fractions (to 1/64 in)
              plan-a-neck --keys                 lists every key a neck file may have; --schema as JSON Schema
              plan-a-neck --help                 prints this

            From the project's folder plan-a-neck is: mvn -q compile exec:java -Dexec.args="..."
            Necks that come with it, in neckgeom-examples/src/main/necks: octave-mandolin.yaml, metric;
            short-scale-bass.yaml, inches; fanned-baritone.yaml; parlour-guitar.yaml, fractions, slotted head.
            Ends with 0 when done, 1 when the file can't be used, 2 when the command line can't be understood.
            """;

    /** The last lines of the first screen: which files can be written, and where the rest is. */
    private static final String MORE = """
            WRITE  --all FOLDER: plan.html, templates (svg, dxf, pdf), meshes, tables, data
            MORE   --full  --next  --section NAME  --bench FILE (keeps readings)  --help
            """;

    /** The last line of a card: where the rest is. */
    private static final String REST_OF_CARD =
            "MORE   --section cautions: all of them, with reasons; --cards FOLDER: to print\n";

    private PlanANeck() {}

    /**
     * Does what the command line asks for, and ends the JVM with its status unless all went well.
     *
     * @param args see {@code --help}
     */
    public static void main(String[] args) {
        int status = run(
                List.of(args),
                new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset())),
                System.out,
                System.err,
                Progress.ofThisProcess(),
                Terminal.ofThisProcess());
        System.out.flush();
        if (status != DONE) {
            System.exit(status);
        }
    }

    /** The same without the end of the JVM, without input and without colours. */
    static int run(List<String> arguments, PrintStream out, PrintStream err, Progress progress) {
        return run(arguments, new BufferedReader(Reader.nullReader()), out, err, progress, Terminal.plain());
    }

    /** The same without the end of the JVM. */
    static int run(
            List<String> arguments,
            BufferedReader in,
            PrintStream out,
            PrintStream err,
            Progress progress,
            Terminal terminal) {
        Orders orders;
        try {
            orders = Orders.from(arguments);
        } catch (IllegalArgumentException unclear) {
            err.println(Words.shown(unclear.getMessage()));
            return NOT_UNDERSTOOD;
        }
        try {
            if (orders.task() == Orders.Task.BENCH) {
                Bench.at(Path.of(orders.file()), in, out).work();
            } else if (orders.task() == Orders.Task.SERVE) {
                BenchFile file = BenchFile.at(Path.of(orders.file()));
                OutputFiles.check(List.of(file.path()));
                BenchServer.start(file, orders.address()).work(out);
            } else {
                out.print(terminal.verdict(answer(orders, progress)));
            }
            return DONE;
        } catch (FileRefused refused) {
            err.println(refused.getMessage());
            return REFUSED;
        } catch (InWords lines) {
            err.println(lines.getMessage());
            return REFUSED;
        } catch (Unwritable sentence) {
            err.println(Words.shown(sentence.getMessage()));
            return REFUSED;
        } catch (IllegalArgumentException | ArithmeticException unplannable) {
            err.println(Words.shown(orders.file() + " can't be planned: " + unplannable.getMessage()));
            return REFUSED;
        }
    }

    /** The whole answer before any of it is printed: a refused file prints nothing. */
    private static String answer(Orders orders, Progress progress) throws Unwritable, InWords {
        return switch (orders.task()) {
            case HELP -> HELP;
            case KEYS -> "Keys of a neck file; those with a star must be there.\n\n" + NeckFile.keys();
            case SCHEMA -> NeckFile.schema();
            case CHECK ->
                Words.shown(orders.file()) + " can be planned: "
                        + NeckFile.read(orders.file()).neck().name() + "\n";
            case CHECK_SET -> checked(orders.set().orElseThrow());
            case BENCH, SERVE -> throw new AssertionError("a session prints while it works");
            case PLAN, FULL, SECTION, NEXT, CARD -> {
                OutputFiles.check(orders.outputs().values());
                String text = NeckFile.text(orders.file());
                Job plan = NeckFile.parse(orders.file(), text);
                Optional<String> added = orders.addTo().isPresent()
                        ? Optional.of(ShopLogFile.add(orders.addTo().get(), plan))
                        : Optional.empty();
                if (orders.log().isPresent()) {
                    plan = plan.learnt(ShopLogFile.read(orders.log().get()), LocalDate.now(ZoneId.systemDefault()));
                }
                yield added.orElse("")
                        + planned(
                                orders, text, orders.style().map(plan::printIn).orElse(plan), progress);
            }
        };
    }

    private static String printed(Orders orders, Sheet sheet) throws InWords {
        return switch (orders.task()) {
            case FULL -> sheet.toText();
            case NEXT -> sheet.toStep();
            case SECTION -> named(sheet::toSection, orders.section().orElseThrow());
            case CARD -> named(sheet::toCard, orders.section().orElseThrow()) + REST_OF_CARD;
            default -> sheet.toFirstScreen() + MORE;
        };
    }

    private static String named(UnaryOperator<String> part, String name) throws InWords {
        try {
            return part.apply(name);
        } catch (Refusal unknown) {
            throw new InWords(unknown.getMessage());
        }
    }

    private static String checked(Path folder) throws InWords {
        OutputSet.Checked checked = OutputSet.check(folder);
        if (!checked.isWhole()) {
            throw new InWords(checked.text().strip());
        }
        return checked.text();
    }

    /** What can't be done, in words. */
    private static final class InWords extends Exception {

        private static final long serialVersionUID = 1L;

        InWords(String words) {
            super(words);
        }
    }

    private static String planned(Orders orders, String text, Job plan, Progress progress) throws Unwritable, InWords {
        if (orders.outputs().isEmpty()) {
            return printed(orders, Sheet.of(plan));
        }
        if (orders.set().isPresent() && orders.outputs().keySet().stream().allMatch(Output::isCards)) {
            Set<String> cards = orders.outputs().values().stream()
                    .map(path -> String.valueOf(path.getFileName()))
                    .collect(Collectors.toSet());
            OutputSet.checkRoom(orders.set().get(), cards);
        }
        Output.Asked asked = new Output.Asked(plan, orders.paperFor(plan), orders.landscape(), progress);
        Map<Path, byte[]> files = new LinkedHashMap<>();
        StringBuilder written = new StringBuilder();
        for (Map.Entry<Output, Path> order : orders.outputs().entrySet()) {
            Output output = order.getKey();
            progress.at(output.toString());
            Map<Path, byte[]> its = output.files(order.getValue(), asked);
            its.keySet()
                    .forEach(path -> written.append(output)
                            .append(": ")
                            .append(shown(path))
                            .append('\n'));
            files.putAll(its);
        }
        Optional<Path> list = orders.set().map(folder -> folder.resolve(OutputSet.NAME));
        list.ifPresent(last -> files.put(last, OutputSet.list(orders.file(), text, plan, named(last, files))));
        progress.end();
        StringBuilder report = new StringBuilder(plan.plan().status().toString()).append('\n');
        OutputFiles.Written done = OutputFiles.write(files);
        done.mended()
                .forEach(folder -> report.append("an earlier run was broken off in ")
                        .append(shown(folder))
                        .append(": its files were put back as they were\n"));
        done.made()
                .forEach(folder ->
                        report.append("made the folder ").append(shown(folder)).append('\n'));
        report.append(written);
        list.ifPresent(last -> report.append("list of set ")
                .append(Document.mark(plan))
                .append(": ")
                .append(shown(last))
                .append('\n'));
        return report.toString();
    }

    private static String shown(Path path) {
        return Words.shown(path.toString());
    }

    /** The files in the list's own folder, by name. */
    private static Map<String, byte[]> named(Path list, Map<Path, byte[]> files) {
        Map<String, byte[]> named = new LinkedHashMap<>();
        files.forEach((path, bytes) -> {
            if (Objects.equals(path.getParent(), list.getParent())) {
                named.put(path.getFileName().toString(), bytes);
            }
        });
        return named;
    }
}
