package org.neckgeom.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.examples.neck.ShippedNecks;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class PlanANeckTest {

    @TempDir
    Path folder;

    /** How a command ended and what it printed. */
    private record Ended(int status, String out, String err) {}

    /** Numbers worked by hand: 560 (1 - 2^(-12/12)) = 280; 560 (1 - 2^(-14/12)) = 310.548; (9 + 0.2) deep. */
    @Test
    void run_plansTheOctaveMandolinUnlessAnotherIsNamed() {
        Ended ended = run("--full");

        assertThat(ended.status()).isZero();
        assertThat(ended.err()).isEmpty();
        assertThat(ended.out())
                .startsWith("Octave mandolin, walnut\n=====")
                .contains(
                        "Centre the cutter",
                        "Truss rod channel",
                        "Scarf joint",
                        "Wood under the channel",
                        "Before the machine runs")
                .contains("9.2 mm deep", "12      280.00", "14      310.55")
                .endsWith("\n");
    }

    /** e = (1.1830 - 1.2218)/2 = -0.0194 in; 30 (1 - 2^(-12/12)) = 15 in; 30 (1 - 2^(-16/12)) = 18.0945 in. */
    @Test
    void run_plansTheShippedBassInInches() {
        Ended ended = run("--full", "short-scale-bass.yaml");

        assertThat(ended.status()).isZero();
        assertThat(ended.out())
                .startsWith("Short-scale bass, five strings\n=====")
                .contains("slot 19.40 thou nearer the fence", "away from the cutter", "12      15.000")
                .contains("16      18.094");
    }

    /** By hand: 560 mm are 22.04724 in, 22 3/64 in and 0.4 thou; the octave 11.02362 in; 9.2 mm are 23/64 in and 2.8 thou. */
    @Test
    void run_printsInTheUnitsAskedFor_howeverTheyAreAskedFor() throws IOException {
        String asked =
                run("--full", "--units", "fractions", "octave-mandolin.yaml").out();
        Path own = own(ShippedNecks.text("octave-mandolin.yaml")
                .replace("\n# print in: fractions ", "\nprint in: fractions "));

        assertThat(asked).contains("22 3/64 in + 0.4 thou scale", "23/64 in + 2.8 thou deep", "12      11.024");
        assertThat(asked.replaceAll("[\\d.]+ mm lea", "lea").replaceAll("\\d mm \\(", "("))
                .doesNotContainPattern("\\d mm\\b");
        assertThat(run("--full", own.toString()).out()).isEqualTo(asked);
        assertThat(run("--full", "--units", "inch", own.toString()).out())
                .isEqualTo(run("--full", "--units", "inch").out())
                .contains("0.3622 in deep");
        assertThat(run("--full", "--units", "mm", own.toString()).out())
                .isEqualTo(run("--full").out());
    }

    @Test
    void run_writesTablesAndTemplatesInTheUnitsAskedFor() throws IOException {
        Path frets = folder.resolve("frets.csv");
        Path page = folder.resolve("plan.html");

        assertThat(run("--units", "fractions", "--frets", frets.toString(), "--html", page.toString())
                        .status())
                .isZero();
        assertThat(Files.readString(frets)).startsWith("fret,from nut in,from last in,length in,slant deg,bass x in,");
        assertThat(Files.readString(page)).contains("22 3/64 in + 0.4 thou");
        assertThat(run("--units", "ells").err())
                .isEqualTo("--units must be followed by mm, inch or fractions, but was followed by ells\n");
        assertThat(run("--units").err()).contains("but was followed by nothing");
        assertThat(run("--units", "mm", "--keys").status()).isEqualTo(2);
    }

    @Test
    void run_plansAFileOfTheMakers() throws IOException {
        Path own = own(ShippedNecks.text("octave-mandolin.yaml").replace("Octave mandolin, walnut", "Mine"));

        assertThat(run("--full", own.toString()).out()).startsWith("Mine\n====");
        assertThat(run(own.toString()).out()).startsWith("Mine  ");
    }

    /** The whole of it on a screen of 24 lines of 80 columns (common practice), for every neck and unit. */
    @ParameterizedTest
    @CsvSource({
        "octave-mandolin.yaml, mm", "octave-mandolin.yaml, inch", "octave-mandolin.yaml, fractions",
        "short-scale-bass.yaml, mm", "short-scale-bass.yaml, inch", "short-scale-bass.yaml, fractions",
        "fanned-baritone.yaml, mm", "fanned-baritone.yaml, inch", "fanned-baritone.yaml, fractions",
        "parlour-guitar.yaml, mm", "parlour-guitar.yaml, inch", "parlour-guitar.yaml, fractions"
    })
    void run_printsAFirstScreen_thatFits(String neck, String units) {
        Ended ended = run("--units", units, neck);

        assertThat(ended.status()).isZero();
        assertThat(ended.out().lines())
                .hasSizeBetween(15, 24)
                .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(80));
        assertThat(ended.out())
                .startsWith(NeckFile.read(neck).neck().name())
                .containsPattern("(?m)^VERDICT  (OK|OPEN|STOP): \\d+ of \\d+ checks OK")
                .containsPattern("(?m)^NOW  \\p{Lu}")
                .containsPattern("(?m)^(SPARE  wood under the channel|  MIND  Clamp a stop behind)")
                .contains("\nWRITE  --all FOLDER", "--full", "--section NAME", "--help")
                .doesNotContain("\u001b");
    }

    /** Post 1 moved from 1 1/8 to 2 1/2 in bass of the middle: the head is 4 1/8 in wide, 2 1/16 in a side, so no wood is round it. */
    @Test
    void run_printsWhyToStop_andFits_whereManySettingsAre() throws IOException {
        Path own = own(ShippedNecks.text("short-scale-bass.yaml").replace("aside: [-1 1/8 in,", "aside: [-2 1/2 in,"));

        String screen = run("--units", "fractions", own.toString()).out();

        assertThat(screen).contains("NOW  Cut the rod channel", "\nVERDICT  STOP", "\nSTOP  posts on the wood: ");
        assertThat(screen.lines()).hasSizeLessThanOrEqualTo(24);
    }

    /** A hand is in danger at the channel: its caution is on the screen before what the blank has to spare. */
    @Test
    void run_printsACautionWithTheCutOfTheChannel() {
        assertThat(run("short-scale-bass.yaml").out())
                .contains("NOW  Cut the rod channel", "\n  MIND  Clamp a stop behind and a stop in front");
    }

    /** By hand: (61 - 6)/2 = 27.5; (61 - 54)/2 = 3.5 at the heel. */
    @Test
    void run_printsWhatToDoNow_withItsSettings() {
        assertThat(run().out())
                .contains("VERDICT  OPEN: 19 of 21 checks OK, 2 open")
                .contains("NOW  Make a trial cut in a test piece")
                .contains("test piece  61 mm wide, ripped with the blank", "27.5 mm from the cutter's near edge")
                .contains("OPEN  channel centred: not measured, limit: within 0.1 mm")
                .contains("SPARE  wood under the channel 4.7 mm at 3 mm from the nut, limit 3 mm; width 3.5");
    }

    @Test
    void readme_showsTheFirstScreenAsItIs() throws IOException {
        assertThat(Files.readString(Path.of("..", "README.md"))).contains("```text\n" + run().out() + "```\n");
    }

    @Test
    void run_printsOnePart_andTheStepAtHand() {
        assertThat(run("--section", "channel").out())
                .startsWith("Truss rod channel\n-----")
                .isEqualTo(run("--section", "Truss rod channel").out())
                .doesNotContain("Scarf joint\n");
        assertThat(run("--full").out()).contains(run("--section", "scarf").out());
        assertThat(run("--section", "checks").out()).startsWith("Checks\n------\nOPEN");
        assertThat(run("--section", "nothing"))
                .satisfies(ended -> assertThat(ended.status()).isEqualTo(1))
                .satisfies(ended -> assertThat(ended.err())
                        .startsWith("section must be one of checks, cautions, centring, ")
                        .endsWith(", order-of-work, but was \"nothing\"\n"));
        assertThat(run("--next").out())
                .startsWith("Make a trial cut in a test piece\n=====")
                .contains("near wall, usually 22.5 to 32.5 mm", "[HSE WIS18 for the stops; common practice]");
        assertThat(run("--card", "cut scarf").out())
                .startsWith("CARD 6  CUT SCARF\n")
                .contains("drops 34.63 mm, 150 mm along", "[ ]", "head angle as sawn ______");
        assertThat(run("--card", "bake").status()).isEqualTo(1);
        assertThat(run("--section").status()).isEqualTo(2);
        assertThat(run("--next", "--full").status()).isEqualTo(2);
    }

    /** Cards alone may be written anew, but not into a set that has more: its list would lose the rest. */
    @Test
    void run_writesCardsIntoNoSetOfOtherFiles() throws IOException {
        Path sheets = folder.resolve("sheets");
        assertThat(run("--cards", sheets.toString()).status()).isZero();
        assertThat(run("--cards", sheets.toString()).status()).isZero();
        assertThat(run("--all", sheets.toString()).status()).isZero();
        String list = Files.readString(sheets.resolve("neckgeom-set.json"));

        Ended ended = run("--cards", sheets.toString());

        assertThat(ended.status()).isEqualTo(1);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err())
                .isEqualTo(sheets + " holds a set of other files: write it anew with --all, which has the cards too, or"
                        + " name another folder\n");
        assertThat(sheets.resolve("neckgeom-set.json")).hasContent(list);
        assertThat(run("--check-set", sheets.toString()).status()).isZero();
    }

    @Test
    void run_checksWithoutPlanning() throws IOException {
        Ended good = run("--check", "octave-mandolin.yaml");
        Ended bad = run("--check", own("name: Mine\n").toString());

        assertThat(good).isEqualTo(new Ended(0, "octave-mandolin.yaml can be planned: Octave mandolin, walnut\n", ""));
        assertThat(bad.status()).isEqualTo(1);
        assertThat(bad.out()).isEmpty();
        assertThat(bad.err()).startsWith("8 things to mend in ").contains("scale is missing; give a length");
    }

    @Test
    void run_printsNothingOfAFileThatCannotBeUsed() throws IOException {
        Path own = own(ShippedNecks.text("octave-mandolin.yaml").replace("length: 640 mm", "length: 300 mm"));

        Ended ended = run(own.toString());

        assertThat(ended.status()).isEqualTo(1);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err())
                .startsWith("2 things to mend in " + own + "\n")
                .containsPattern(
                        "\\Q" + own + "\\E, line \\d+: truss rod.length must be 96.5 mm or less: .*, but was 300 mm\n")
                .containsPattern(
                        "\\Q" + own + "\\E, line \\d+: blank.length must be 510.548 mm or more: .*, but was 300 mm\n$");
    }

    @Test
    void run_writesAPageThatIsWellFormed() throws Exception {
        Path page = folder.resolve("bass.html");

        Ended ended = run("--html", page.toString(), "short-scale-bass.yaml");

        assertThat(ended.status()).isZero();
        assertThat(ended.out())
                .contains("Short-scale bass, five strings")
                .endsWith("the plan with drawings: " + page + "\n");
        Document read = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(
                        new StringReader(Files.readString(page).replaceFirst("(?i)<!doctype html>", ""))));
        assertThat(read.getDocumentElement().getTagName()).isEqualTo("html");
        assertThat(read.getElementsByTagName("svg").getLength()).isPositive();
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactly(page);
        }
    }

    @Test
    void run_writesTemplatesInEveryFormAskedFor() throws Exception {
        Path svg = folder.resolve("neck.svg");
        Path dxf = folder.resolve("neck.dxf");
        Path pages = folder.resolve("neck.html");

        Ended ended = run("--svg", svg.toString(), "--dxf", dxf.toString(), "--pages", pages.toString());

        assertThat(ended.status()).isZero();
        assertThat(ended.out()).contains("templates at full size: " + svg, "templates for CAD: " + dxf);
        assertThat(Files.readString(svg)).contains("<svg").endsWith("</svg>\n");
        assertThat(Files.readString(dxf)).contains("SECTION", "POLYLINE").endsWith("EOF\r\n");
        assertThat(Files.readString(pages)).contains("A4").contains("</html>");
    }

    @Test
    void run_writesThePlanAsDataThatReadsBack() throws IOException {
        Path json = folder.resolve("neck.json");
        Path frets = folder.resolve("frets.csv");
        Path stations = folder.resolve("stations.csv");

        Ended ended = run("--json", json.toString(), "--frets", frets.toString(), "--stations", stations.toString());

        assertThat(ended.status()).isZero();
        assertThat(ended.out()).contains("the plan as data: " + json, "table of frets: " + frets);
        assertThat(org.neckgeom.page.Document.PLAN.read(Files.readString(json)).neckAsGiven())
                .isEqualTo(NeckFile.read("octave-mandolin.yaml").neck());
        assertThat(Files.readAllLines(frets))
                .hasSize(22)
                .startsWith(
                        "fret,from nut mm,from last mm,length mm,slant deg,bass x mm,bass y mm,treble x mm,treble y mm");
        assertThat(Files.readString(stations)).startsWith("name,fromNut (mm),").contains("thinnest");
    }

    @Test
    void run_writesMeshesAndToolPath_andStatesTheTolerance() throws IOException {
        Path obj = folder.resolve("neck.obj");
        Path stl = folder.resolve("neck.stl");
        Path path = folder.resolve("path.csv");

        Ended ended = run("--obj", obj.toString(), "--stl", stl.toString(), "--channel-path", path.toString());

        assertThat(ended.status()).isZero();
        Path head = folder.resolve("neck-head.stl");
        assertThat(ended.out())
                .contains("meshes of all pieces, chords within 0.05 mm: " + obj)
                .contains("mesh of each piece, chords within 0.05 mm: " + head)
                .contains("tool path of the channel, as points: " + path);
        assertThat(Files.readString(obj))
                .startsWith("# mm, chords within 0.05\n")
                .contains("\ng shaft_and_heel\n", "\ng head\n", "\ng cut:_channel\n");
        assertThat(new String(Files.readAllBytes(head), 0, 80, StandardCharsets.US_ASCII))
                .startsWith("mm, chords within 0.05, head");
        assertThat(folder.resolve("neck-cut-channel.stl")).exists();
        assertThat(stl).doesNotExist();
        assertThat(Files.readAllLines(path).get(0))
                .isEqualTo("part,pass,x (mm),y (mm),z (mm),cutter (mm),safeHeight (mm)");
    }

    @Test
    void run_writesNoPageOfAFileThatCannotBeUsedOrIntoAFolderThatIsNotThere() throws IOException {
        Path page = Files.writeString(folder.resolve("old.html"), "the old page");
        Path own = own("name: Mine\n");

        assertThat(run("--html", page.toString(), own.toString()).status()).isEqualTo(1);
        assertThat(page).hasContent("the old page");
        Path deep = folder.resolve("no/such");
        Ended nowhere = run("--html", deep.resolve("page.html").toString());
        assertThat(nowhere)
                .isEqualTo(new Ended(
                        1,
                        "",
                        deep + " can't be made, as " + deep.getParent()
                                + " is not a folder that is there; make that first\n"));
        assertThat(deep.getParent()).doesNotExist();
    }

    @Test
    void run_makesTheFolderItWritesTo_andSaysSo() {
        Path sheets = folder.resolve("sheets");
        Path page = sheets.resolve("plan.html");

        Ended ended = run("--html", page.toString());

        assertThat(ended.status()).isZero();
        assertThat(ended.out()).endsWith("made the folder " + sheets + "\nthe plan with drawings: " + page + "\n");
        assertThat(page).isNotEmptyFile();
    }

    @Test
    void run_refusesAFolderThatIsAFile_andAFileThatIsAFolder() throws IOException {
        Path file = Files.writeString(folder.resolve("sheets"), "not a folder");
        Path taken = Files.createDirectory(folder.resolve("plan.html"));

        assertThat(run("--all", file.toString()))
                .isEqualTo(new Ended(1, "", file + " must be a folder to write to, but is a file\n"));
        assertThat(run("--html", taken.toString()))
                .isEqualTo(new Ended(1, "", taken + " must be a file to write, but is a folder\n"));
        assertThat(file).hasContent("not a folder");
    }

    /** No file system takes a name of 300 letters (common practice: 255 bytes). */
    @Test
    void write_leavesNothingOfSeveralFilesWhenOneCannotBeWritten() throws IOException {
        Path made = folder.resolve("made");
        Path good = made.resolve("a.txt");
        Path bad = made.resolve("x".repeat(300));
        Map<Path, byte[]> files = new LinkedHashMap<>();
        files.put(good, new byte[] {1});
        files.put(bad, new byte[] {2});

        assertThatThrownBy(() -> OutputFiles.write(files)).isInstanceOf(IOException.class);

        assertThat(made).doesNotExist();
    }

    @Test
    void run_takesThePaperItIsTold() throws IOException {
        Path pages = folder.resolve("pages.html");

        assertThat(run("--pages", pages.toString(), "--paper", "letter").status())
                .isZero();
        assertThat(Files.readString(pages)).contains("size:letter landscape");
        assertThat(run("--pages", pages.toString(), "short-scale-bass.yaml").status())
                .isZero();
        assertThat(Files.readString(pages)).contains("size:letter landscape");
        assertThat(run("--pages", pages.toString()).status()).isZero();
        assertThat(Files.readString(pages)).contains("size:A4 landscape");
    }

    @Test
    void run_saysHowFarItIsOnATerminalAlone() {
        ByteArrayOutputStream terminal = new ByteArrayOutputStream();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        List<String> order = List.of("--pdf", folder.resolve("a.pdf").toString());

        PlanANeck.run(order, printer(out), printer(out), Progress.on(printer(terminal)));

        assertThat(text(terminal)).contains("page 1 of ", "page 2 of ").endsWith("\r\u001b[K");
        assertThat(text(out)).doesNotContain("page 1 of");
        // The tests run without a terminal: nothing is said then.
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream before = System.err;
        System.setErr(printer(err));
        try {
            Progress.ofThisProcess().at("page 1 of 2");
        } finally {
            System.setErr(before);
        }
        assertThat(text(err)).isEmpty();
    }

    @Test
    void run_namesAMissingFile() {
        Ended ended = run("no-such-neck.yaml");

        assertThat(ended.status()).isEqualTo(1);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err()).startsWith("no-such-neck.yaml: there is no such file; looked for ");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--plan | --plan is not known here; --help shows what is",
                "-x my.yaml | -x is not known here; --help shows what is",
                "a.yaml b.yaml | one neck file at a time, but 2 were named: a.yaml, b.yaml",
                "--html | --html must be followed by the file to write, but nothing follows",
                "--html my.yaml my.yaml | the file after --html must end in .html, but was my.yaml",
                "--html a.html --keys | --html goes with planning alone",
                "--dxf a.svg | the file after --dxf must end in .dxf, but was a.svg",
                "--paper A4 | --paper goes with --pages, --pdf, --cards or --all",
                "--pdf a.pdf --paper A3 | --paper must be followed by A4 or letter, but was followed by A3",
                "--pdf a.pdf --paper | --paper must be followed by A4 or letter, but was followed by nothing",
                "--pages a.html --html a.html | a.html is asked for by both --html and --pages",
                "--check-set | --check-set must be followed by the folder to look at, but nothing follows",
                "--check-set a my.yaml | --check-set looks at a folder alone, but my.yaml was named",
                "--check --keys | --keys does not go with another task; ask for one at a time"
            })
    void run_refusesACommandLineItDoesNotUnderstand(String line, String sentence) {
        assertThat(run(line.split(" "))).isEqualTo(new Ended(2, "", sentence + "\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "-h"})
    void run_helpsWithExamples(String argument) {
        Ended ended = run(argument);

        assertThat(ended.status()).isZero();
        assertThat(ended.out().lines())
                .hasSizeLessThan(27)
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(110));
        assertThat(ended.out()).contains("--check my-neck.yaml", "--keys", "--schema", "mvn -q compile exec:java");
    }

    @Test
    void run_listsKeysAndSchema() throws IOException {
        assertThat(run("--keys").out()).contains("* frets: ", "    near wall: ", "width at the nut line");
        assertThat(run("--schema").out()).isEqualTo(Files.readString(Path.of("src/main/necks/neck.schema.json")));
    }

    private Path own(String text) throws IOException {
        return Files.writeString(folder.resolve("own.yaml"), text);
    }

    private static Ended run(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = PlanANeck.run(List.of(arguments), printer(out), printer(err), Progress.none());
        return new Ended(status, text(out), text(err));
    }

    private static PrintStream printer(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }

    private static String text(ByteArrayOutputStream bytes) {
        return bytes.toString(StandardCharsets.UTF_8).replace("\r\n", "\n");
    }

    @Test
    void run_writesAllIntoOneFolder(@TempDir Path sheets) throws IOException {
        Ended ended = run("--all", sheets.toString());

        assertThat(ended.status()).isZero();
        try (Stream<Path> files = Files.list(sheets)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder(
                            "plan.html",
                            "templates.svg",
                            "templates.dxf",
                            "template-pages.html",
                            "templates.pdf",
                            "cards.html",
                            "cards.pdf",
                            "plan.json",
                            "frets.csv",
                            "stations.csv",
                            "pieces.obj",
                            "piece-shaft-and-heel.stl",
                            "piece-fingerboard.stl",
                            "piece-head.stl",
                            "piece-wing-1.stl",
                            "piece-wing-2.stl",
                            "piece-dovetail.stl",
                            "piece-cut-channel.stl",
                            "channel-path.csv",
                            "neckgeom-set.json");
        }
        assertThat(ended.out())
                .matches("(?s).*\nlist of set [0-9a-f]{8}: \\Q" + sheets.resolve("neckgeom-set.json") + "\\E\n");
        assertThat(run("--check-set", sheets.toString()).out())
                .matches("\\Q" + sheets
                        + "\\E is whole: set [0-9a-f]{8} of octave-mandolin.yaml, in mm, its 19 files belong "
                        + "together\n");
    }

    /** The hashes are those of an independent tool: sha256sum of the shipped file, the JDK's digest of what was written. */
    @Test
    void run_listsWhatTheSetWasMadeFrom(@TempDir Path sheets) throws Exception {
        run("--all", sheets.toString(), "--units", "fractions", "short-scale-bass.yaml");

        JsonNode list = new JsonMapper().readTree(Files.readString(sheets.resolve("neckgeom-set.json")));

        byte[] neck = Files.readAllBytes(Path.of("src/main/necks/short-scale-bass.yaml"));
        assertThat(list.get("neck file's hash").asString()).isEqualTo(sha256(neck));
        assertThat(list.get("files").get("templates.pdf").asString())
                .isEqualTo(sha256(Files.readAllBytes(sheets.resolve("templates.pdf"))));
        assertThat(list.get("units").asString()).isEqualTo("fractions");
        assertThat(list.get("neckgeom").asString()).matches("\\d+\\.\\d+\\.\\d+(-SNAPSHOT)?");
        String mark = list.get("set").asString();
        assertThat(list.get("plan's hash").asString()).startsWith(mark);
        for (String name : List.of("plan.html", "templates.svg", "templates.dxf", "template-pages.html")) {
            assertThat(Files.readString(sheets.resolve(name))).as(name).contains("set " + mark);
        }
    }

    private static String sha256(byte[] bytes) throws NoSuchAlgorithmException {
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    }

    @Test
    void run_namesWhatDoesNotBelongToASet(@TempDir Path sheets) {
        run("--all", sheets.toString());
        run("--html", sheets.resolve("plan.html").toString(), "--units", "inch");

        Ended ended = run("--check-set", sheets.toString());

        assertThat(ended.status()).isEqualTo(1);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err())
                .startsWith(sheets + " is NOT whole: set ")
                .endsWith("\n  plan.html is not of this set: it was written or changed by another run or hand\n");
        assertThat(run("--check-set", folder.toString()).err())
                .isEqualTo(folder + " has no neckgeom-set.json: nothing shows whether its files belong together\n");
        assertThat(run("--check-set", folder.resolve("no").toString()).err())
                .isEqualTo(folder.resolve("no") + " is not a folder that is there\n");
    }

    /** File systems take names of up to 255 bytes (common practice). */
    @Test
    void run_saysInWordsWhyAPlaceCannotBeWritten() throws IOException {
        Path page = Path.of("/dev/null/page.html");
        Path full = Path.of("/dev/full/x.html");
        assertThat(run("--html", page.toString()).err()).doesNotContain("Exception", "java.");
        assertThat(run("--html", full.toString()).err()).doesNotContain("Exception", "java.");
        String name = "x".repeat(300) + ".html";
        Ended ended = run("--html", folder.resolve(name).toString());
        assertThat(ended).isEqualTo(new Ended(1, "", folder.resolve(name) + " can't be written: file name too long\n"));
    }
}
