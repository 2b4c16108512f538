package org.neckgeom.examples.neck;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.examples.file.FileRefused;
import org.neckgeom.examples.file.Problem;
import org.neckgeom.plan.CheckCode;
import org.neckgeom.plan.Outcome;
import org.neckgeom.plan.Plan;
import org.neckgeom.plan.PlanCheck;

/** Every refusal of a neck file: a good file with one thing spoiled, and the one sentence that must come of it. */
class NeckFileRefusalsTest {

    private static final String GOOD = ShippedNecks.text("octave-mandolin.yaml");
    private static final String BASS = ShippedNecks.text("short-scale-bass.yaml");

    /** What is spoiled, how, and how the sentence must start after the file's name and a line number. */
    static Stream<Arguments> spoiled() {
        return Stream.of(
                // a quantity without unit, a unit of the wrong kind, no number at all
                one("scale: 560 mm", "scale: 560", "scale: \"560\" has no unit; a length is wanted: use mm, cm, m, in"),
                one("angle: 13 deg", "angle: 13 mm", "head.angle: \"13 mm\" is a length; an angle is wanted: use"),
                one("tensions: 95 N", "tensions: 95 mm", "strings.tensions: \"95 mm\" is a length; a force is wanted"),
                one("humidity: 45 %", "humidity: 45", "weather.shop air.humidity: \"45\" has no unit"),
                one(
                        "fret height: 1.1 mm",
                        "fret height: 1e-40 mm",
                        "fingerboard.fret height must be 0 or at least 1E-30 mm in size, but was 1E-40 mm"),
                one("kerf: 1.8 mm", "kerf: 1,8 mm", "head.scarf.kerf: \"1,8 mm\""),
                one("kerf: 1.8 mm", "kerf: thin", "head.scarf.kerf: \"thin\" cannot be read as a length"),
                // keys and words
                one(
                        "body at fret: 14",
                        "body at frett: 14",
                        "body at frett is not a known key; did you mean \"body at fret\"?"),
                one(
                        "  thickness: 20 mm",
                        "  thicknes: 20 mm",
                        "blank.thicknes is not a known key; did you mean \"thickness\"?"),
                one(
                        "  kerf: 1.8 mm",
                        "  colour: red",
                        "head.scarf.colour is not a known key; known here: joint, kerf, cleaning"),
                one("frets: 20 ", "frets: 20\nfrets: 21 ", "frets is given twice, on line 11 and on line 12"),
                one(
                        "wood: black walnut",
                        "wood: wallnut",
                        "wood must be one of African ebony, African mahogany, American basswood, black cherry,"),
                one(
                        "wood: Indian rosewood",
                        "wood: Indian rosewod",
                        "fingerboard.wood must be one of African ebony, African mahogany, American basswood, black cherry,"),
                one(
                        "kind: one piece",
                        "kind: one pice",
                        "shop.fence.kind must be one of one piece, split, pivoting (did you mean \"one piece\"?), but was"),
                one(
                        "shape: rounded",
                        "shape: round",
                        "back.shape must be one of rounded, full, flat-backed, pointed, but was \"round\""),
                // numbers and lists
                one("frets: 20 ", "frets: 0 ", "frets must be a whole number from 1 to 200, but was \"0\""),
                one(
                        "flutes: 2 ",
                        "flutes: two ",
                        "shop.cutter.flutes must be a whole number from 1 to 8, but was \"two\""),
                one(
                        "}, {fret: 12, depth: 16.5 mm}]",
                        "}]",
                        "back.depths must be a list of 2 items, each a group with the keys fret, depth, but was a list of 1 item"),
                one(
                        "fret: 12, depth: 16.5 mm",
                        "fret: x, depth: 16.5 mm",
                        "back.depths[2].fret must be a whole number from 0 to 200, but was \"x\""),
                one(
                        "fret: 12, depth",
                        "fret: 1, depth",
                        "back.depths must be at ascending frets, but was at frets 1 and 1"),
                one(
                        "tensions: 95 N",
                        "tensions: [95 N, 90 N]",
                        "strings.tensions must be given once for all or once for each of the 4 courses, but was given 2 times"),
                one(
                        "pitches: [G2, D3, A3, E4]",
                        "pitches: []",
                        "strings.pitches must be a list of 1 to 24 items, each a note with its octave, such as G2, F#3 or"),
                one("pitches: [G2, D3,", "pitches: [G2, H3,", "strings.pitches[2]: \"H3\" cannot be read as a note"),
                one("doubled: yes", "doubled: true", "strings.doubled must be one of yes, no, but was \"true\""),
                one(
                        "joint: in the head",
                        "joint:",
                        "head.scarf.joint has no value; give one of in the head, in the shaft"),
                // ranges
                one("width: 6 mm", "width: -6 mm", "truss rod.width must be more than 0 mm, but was -6 mm"),
                one("scale: 560 mm", "scale: 560 m", "scale must be more than 0 mm and 3000 mm or less, but was 560 m"),
                one(
                        "angle: 13 deg",
                        "angle: 60 deg",
                        "head.angle must be 0 deg or more and 45 deg or less, but was 60 deg"),
                one(
                        "radius: 400 mm",
                        "radius: 10 mm",
                        "fingerboard.radius must be more than half the width of 34 mm, but was 10 mm"),
                one(
                        "last pass: 0.5 mm",
                        "last pass: 5 mm",
                        "shop.last pass must be 1.5 mm or less, the deepest pass, but was 5 mm"),
                // what belongs to the shape beyond the design
                one("feed: 1800 mm/min", "feed: 1800 mm", "shop.feed: \"1800 mm\" is a length; a speed is wanted"),
                one(
                        "turning: 16000 rpm",
                        "turning: 16000 mm",
                        "shop.turning: \"16000 mm\" is a length; a frequency is wanted"),
                one(
                        "fret height: 1.1 mm",
                        "fret height: 0 mm",
                        "fingerboard.fret height must be more than 0 mm, but was 0 mm"),
                one(
                        "  fret height: 1.1 mm",
                        "  #",
                        "fingerboard.fret height is missing; the strings come down from it to the head's posts"),
                one(
                        "  overstand: 0 mm ",
                        "  fret plane: 7.1 mm\n  overstand: 0 mm ",
                        "neck set: overstand is given, and fret plane too; keep one of them"),
                one(
                        "overstand: 0 mm ",
                        "fret plane: -6 mm ",
                        "neck set.fret plane must be 0 or more: fret tops over the body's top"),
                one(
                        "overstand: 0 mm",
                        "overstand: -8 mm",
                        "neck set.overstand must be -7.1 mm or more, which lets board and frets into the body"),
                one(
                        "tuners take: [13 mm, 17 mm]",
                        "tuners take: [13 mm]",
                        "head.tuners take must be a list of 2 items, each a length of more than 0 mm"),
                one(
                        "tuners take: [13 mm, 17 mm]",
                        "tuners take: [17 mm, 13 mm]",
                        "head.tuners take must be the least thickness, then a greater one, but was"),
                one(
                        "along: [40 mm, 75 mm,",
                        "along: [240 mm, 75 mm,",
                        "head.posts.along must be less than the head's length of 185 mm, but was 240 mm"),
                one(
                        "aside: [-22 mm, -22 mm,",
                        "aside: [-22 mm,",
                        "head.posts.aside must be one for all or one for each of the 8 posts, but was 7"),
                one(
                        "along: [40 mm, 75 mm,",
                        "along: [75 mm,",
                        "head.posts.aside must be one for all or one for each of the 7 posts, but was 8"),
                one(
                        "string over face: 8 mm",
                        "string over face: 8 deg",
                        "head.posts.string over face: \"8 deg\" is an angle; a length is wanted"),
                one(
                        "width at tip: 76 mm",
                        "width at tip: 0 mm",
                        "head.width at tip must be more than 0 mm, but was 0 mm"),
                one(
                        "width at break line: 60 mm",
                        "width at break line: -6 mm",
                        "head.width at break line must be more than 0 mm, but was -6 mm"),
                one(
                        "spacing: equal gaps",
                        "spacing: equal",
                        "strings.across.spacing must be one of equal centres, equal gaps, graduated, but was \"equal\""),
                one(
                        "spacing: equal gaps",
                        "spacing: graduated",
                        "strings.across: spacing graduated and growth must be given together, or neither"),
                one("    in pair: 2.6 mm", "    #", "strings: in pair is missing; doubled strings need it"),
                one("    span at saddle: 44 mm", "    #", "strings.across.span at saddle is missing"),
                one(
                        "edge margin: 3 mm",
                        "edge margin: 17 mm",
                        "strings.across: edge margin must be less than half the width of 34 mm, but was 17 mm"),
                one("span at saddle: 44 mm", "span at saddle: 10 mm", "strings.across: strings must fit side by side"),
                one(
                        "0.43 mm, 0.28 mm]",
                        "0.43 mm, 11 mm]",
                        "strings.diameters[4] must be more than 0 mm and 6 mm or less, but was 11 mm"),
                one(
                        "    diameter: 6 mm ",
                        "    diameter: 6.5 mm ",
                        "shop.cutter.diameter must be 6 mm or less, the channel's width: a thinner cutter, or a channel with 0.5 mm"
                                + " of side clearance, but was 6.5 mm"),
                // what only the whole plan shows
                one("width: 46 mm}", "width: 1 mm}", "the fingerboard has no section at "),
                one(
                        "action: 2.0 mm",
                        "action: 2.0 m",
                        "neck set.neck angle must be more than -20 and less than 20 deg, but was "),
                one(
                        "  length: 300 mm ",
                        "  length: 500 mm ",
                        "truss rod.length must be 436.5 mm or less: its channel ends 63.5 mm past the end of the blank, but was 500 mm"),
                one(
                        "starts at: 3 mm ",
                        "starts at: -210 mm ",
                        "channel.starts at must be -200 mm or more, where the blank begins, but was -210 mm"),
                one(
                        "side clearance: 0 mm ",
                        "side clearance: 60 mm ",
                        "channel.side clearance must leave a channel narrower than the blank's 60.989 mm, not one 66 mm wide, but was"),
                one(
                        "along: [40 mm, 75 mm,",
                        "along: [40 mm, 75 mm, 80 mm,",
                        "head.posts.aside must be one for all or one for each of the 9 posts, but was 8"),
                one(
                        "diameters: [1.02 mm,",
                        "diameters: [7 mm,",
                        "strings.diameters[1] must be more than 0 mm and 6 mm or less, but was 7 mm"),
                one(
                        "block length: 35 mm",
                        "block length: 0 mm",
                        "heel.block length must be more than 0 mm, but was 0 mm"),
                one(
                        "end allowance: 3 mm",
                        "end allowance: -3 mm",
                        "blank.end allowance must be 0 mm or more, but was -3 mm"),
                one(
                        "edge allowance: 2 mm",
                        "edge allowance: 2",
                        "blank.edge allowance: \"2\" has no unit; a length is wanted"),
                one("planing: 0.5 mm", "planing: -1 mm", "blank.planing must be 0 mm or more, but was -1 mm"),
                one("saw kerf: 1.8 mm", "saw kerf: thin", "blank.saw kerf: \"thin\" cannot be read as a length"),
                // the blank
                one("length: 640 mm", "length: 300 mm", "blank.length must be 510.548 mm or more: 200"),
                one("width: 61 mm", "width: 40 mm", "blank.width must be 46.000 mm or more: the"),
                one("  thickness: 20 mm", "  thickness: 15 mm", "blank.thickness must be 16.585 mm or more: the back"),
                // parts that do not go together
                one(
                        "  fillet: 0 mm",
                        "  adjuster pocket: {length: 400 mm, width: 8 mm, depth: 10 mm}",
                        "channel.adjuster pocket.length must be no more than the channel's 300.5 mm, but was 400 mm"),
                one(
                        "  fillet: 0 mm",
                        "  adjuster pocket: {length: 5 mm, width: 8 mm, depth: 10 mm}",
                        "channel.adjuster pocket.length must be 6 mm or more, the cutter's diameter, but was 5 mm"),
                one("diameter: 6 mm", "diameter: 8 mm", "shop.cutter.diameter must be 6 mm or less"),
                one(
                        "length: 300 mm",
                        "length: 5 mm",
                        "truss rod.length must make a channel of 6 mm or more, as long as the cutter is wide, but was 5 mm"),
                one(
                        "    flutes: 2 ",
                        "    # ",
                        "shop.cutter: flutes and flute length must be given together, but flutes is missing"),
                one(
                        "  turning: 16000 rpm",
                        "  #",
                        "shop: feed and turning must be given together, but turning is missing"),
                one("turning: 16000 rpm", "turning: 16000", "shop.turning: \"16000\" has no unit"),
                one("kind: one piece", "kind: split", "shop.fence: out of line is missing; a split fence needs it"),
                one(
                        "kind: two-way",
                        "kind: single-action",
                        "truss rod: a single-action rod is round: give its diameter as"),
                one("    set: metric 20", "    #", "shop.feeler gauges: either set or gauges must be given, and not"),
                one(
                        "  angle: 13 deg",
                        "  #",
                        "head: a flat head has no scarf; give the head angle, or leave the scarf out"));
    }

    private static Arguments one(String good, String bad, String sentence) {
        return Arguments.of(good, bad, sentence);
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("spoiled")
    void parse_refusesOneMistakeInOneSentence(String good, String bad, String sentence) {
        assertThat(GOOD).contains(good);
        String text = GOOD.replaceFirst(Pattern.quote(good), Matcher.quoteReplacement(bad));

        List<Problem> problems = problems(text);

        assertThat(problems).isNotEmpty().allSatisfy(problem -> {
            assertThat(problem.place().file()).isEqualTo("n.yaml");
            assertThat(problem.place().line()).isPositive();
            assertThat(problem.sentence()).doesNotContain("\n");
        });
        assertThat(problems)
                .anySatisfy(problem -> assertThat(problem.sentence()).startsWith(sentence));
    }

    /** No string has a place on this board, so that head, shape and load have no answer either. */
    @Test
    void parse_saysOnceWhatRefusesSeveralQuestions() {
        assertThat(problems(GOOD.replace("edge margin: 3 mm", "edge margin: 40 mm")))
                .extracting(Problem::sentence)
                .containsExactly(
                        "strings.across: edge margin must be less than half the width of 34 mm, but was 40 mm");
    }

    @Test
    void parse_namesTheLineOfTheMistake() {
        int line = GOOD.substring(0, GOOD.indexOf("kerf:")).split("\n", -1).length;

        assertThat(first(GOOD.replace("kerf: 1.8 mm", "kerf: 1.8")).place().line())
                .isEqualTo(line);
        assertThat(first(GOOD.replace("length: 640 mm", "length: 505 mm"))
                        .place()
                        .path())
                .isEqualTo("blank.length");
    }

    @Test
    void parse_refusesAHeadInOnePieceThatThePieceCannotHold() {
        String text = GOOD.replaceAll("(?s)\n  scarf:.*?\nheel:", "\nheel:").replace("  nut at: 200 mm", "  #");

        // 185 mm cos 13 deg = 180.258 mm before the nut line, and 310.548 mm to the 14th fret: 490.807 mm.
        assertThat(first(text.replace("length: 640 mm", "length: 490 mm")).sentence())
                .startsWith("blank.length must be 490.807 mm or more: 180.258 mm before the nut line and");
        assertThat(problems(text.replace("length: 640 mm", "length: 491 mm"))).isEmpty();
    }

    /** The line that the README shows is one that a copy of the octave mandolin really gets. */
    @Test
    void parse_refusesAsTheReadmeShows() throws IOException {
        String line = first(GOOD.replace("end allowance: 3 mm", "end allowance: -3 mm"))
                .toString()
                .replace("n.yaml", "my-neck.yaml");

        assertThat(Files.readString(Path.of("README.md"))).contains("\n    " + line + "\n");
    }

    @Test
    void parse_refusesANeckSetThatIsNone() {
        String text = BASS.replaceFirst("(?s)neck set:.*?\nstrings:", "neck set: soon\n\nstrings:");

        assertThat(first(text).sentence()).startsWith("neck set ");
        assertThat(first(text).place().path()).isEqualTo("neck set");
    }

    @Test
    void parse_refusesMovesThatDoNotGoWithTheRounds() {
        assertThat(first(BASS.replace("    repeatability: 0.5 thou ", "    moved toward cutter: 1 thou # "))
                        .sentence())
                .startsWith("trial cuts[2].moved toward cutter is given, and moved.distance too; keep one of them");
        assertThat(first(BASS.replace(
                                "  - near wall: [",
                                "  - moved: {distance: 1 in, direction: toward cutter}\n    near wall: ["))
                        .sentence())
                .startsWith(
                        "trial cuts: a fence move must follow a trial cut, but fence moved 1 in toward the cutter came first");
    }

    @Test
    void parse_refusesAnOrderOfWorkThatNamesNothing() {
        assertThat(first(BASS.replace("first: cut rod channel", "first: cut the channel"))
                        .sentence())
                .startsWith("order of work: operation must be one ")
                .contains("cut the channel");
        assertThat(first(BASS.replace("done: [rest the stock]", "done: [had lunch]"))
                        .sentence())
                .startsWith("order of work: operation must be one ")
                .contains("had lunch");
    }

    @Test
    void parse_refusesAShapeThatTheBassCannotHave() {
        assertThat(first(BASS.replace("extra depth: 1/8 in", "extra depth: 0 in"))
                        .sentence())
                .startsWith("back.volute.extra depth must be more than 0 in, but was 0 in");
        assertThat(first(BASS.replace("    turn radius: 1 in ", "    # ")).sentence())
                .startsWith("back.heel transition.turn radius is missing");
        assertThat(first(BASS.replace("fall-away: 10 thou", "fall-away: -10 thou"))
                        .sentence())
                .startsWith("fingerboard.fall-away must be 0 thou or more, but was -10 thou");
        assertThat(first(BASS.replace("frets: 22", "frets: 16")).sentence())
                .startsWith("fingerboard.fall-away begins at the body joint, fret 16, but there is no fret past it");
        assertThat(first(BASS.replace("spacing: graduated", "spacing: equal gaps"))
                        .sentence())
                .isEqualTo("strings.across: spacing graduated and growth must be given together, or neither");
    }

    /** In a file of before, where the scarf stood at the top: what is wrong is named where the maker wrote it. */
    @Test
    void parse_namesTheOldPlaceOfAScarf() throws IOException {
        String old = Files.readString(Path.of("src/test/resources/version-1/octave-mandolin.yaml"));
        String thin = old.replace("kerf: 1.8 mm", "kerf: thin");

        assertThat(first(thin).sentence()).startsWith("scarf.kerf: \"thin\" cannot be read as a length");
        assertThat(first(thin).place().line())
                .isEqualTo(thin.substring(0, thin.indexOf("kerf: thin")).split("\n", -1).length);
        assertThat(first(old.replace("    string over face: 8 mm", "  scarf: {joint: in the head}"))
                        .sentence())
                .isEqualTo("scarf is given, and head.scarf too; keep one of them");
        assertThat(first(old.replaceAll("(?s)\nhead:\n.*?\nscarf:", "\nscarf:")).sentence())
                .startsWith("head.length is missing; give a length");
    }

    @Test
    void parse_refusesANeckSetWithoutAHeightOfTheFrets() {
        String noPosts = GOOD.replaceAll("(?s)\n  posts:.*?\n  scarf:", "\n  scarf:");

        assertThat(first(noPosts.replace("  fret height: 1.1 mm", "  #")).sentence())
                .startsWith("neck set: either fret plane or the fingerboard's fret height must be given");
    }

    @Test
    void parse_refusesAScaleThatIsNotThatOfTheFan() {
        String fan = "fanned frets: {bass scale: 600 mm, treble scale: 570 mm, perpendicular fret: 7}\n";

        assertThat(first(GOOD.replace("frets: 20 ", fan + "frets: 20 ")).sentence())
                .startsWith("scale must be 584.9")
                .endsWith("that of the fanned frets on the centreline, but was 560 mm");
    }

    @Test
    void parse_refusesANeckWithoutAScale() {
        assertThat(first(GOOD.replace("scale: 560 mm", "#")).sentence()).startsWith("scale is missing; give a length");
    }

    @Test
    void parse_reportsMistakesOfAllPartsAtOnce() {
        String text = GOOD.replace("scale: 560 mm", "scale: 560")
                .replace("shape: rounded", "shape: round")
                .replace("kind: one piece", "kind: split")
                .replace("length: 640 mm", "length: 640 deg")
                .replace("floor thickness: 3 mm", "wood lift: 3 mm");

        assertThat(problems(text).stream().map(problem -> problem.place().path()))
                .containsExactly("scale", "back.shape", "blank.length", "shop.fence.out of line", "limits.wood lift");
    }

    @Test
    void parse_namesEveryMissingKeyAtTheTop() {
        assertThat(problems("name: Only a name\n").stream()
                        .map(problem -> problem.sentence().split(" is missing")[0]))
                .containsExactly("scale", "frets", "body at fret", "fingerboard", "back", "truss rod", "blank", "shop");
    }

    @ParameterizedTest
    @MethodSource("notNecks")
    void parse_refusesWhatIsNoNeckFile(String text, String sentence) {
        List<Problem> problems = problems(text);

        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).sentence()).startsWith(sentence);
    }

    static Stream<Arguments> notNecks() {
        return Stream.of(
                Arguments.of("", "the file holds nothing but blanks and comments"),
                Arguments.of("# name: x\n", "the file holds nothing but blanks and comments"),
                Arguments.of("just a sentence", "the whole must be a group with the keys name, scale,"),
                Arguments.of("- a\n- b\n", "the whole must be a group with the keys name, scale,"),
                Arguments.of("<html><body>{</body>", "the whole must be a group with the keys name, scale,"),
                Arguments.of("{\"name\": [}", "is not YAML from here on"),
                Arguments.of("name: x\n---\nname: y\n", "a second document starts here"),
                Arguments.of("name: !!int x\n", "the tag tag:yaml.org,2002:int is not allowed"));
    }

    private static Problem first(String text) {
        List<Problem> problems = problems(text);
        assertThat(problems).isNotEmpty();
        return problems.get(0);
    }

    private static List<Problem> problems(String text) {
        try {
            NeckFile.parse("n.yaml", text);
            return List.of();
        } catch (FileRefused refused) {
            return refused.problems();
        }
    }

    /** Good inputs without an answer are no fault of the file: the plan is made, and a check states what has none. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "wood: black walnut | wood: {name: pear, density: 690 kg/m3, modulus: 8 GPa} | STRENGTH | OPEN"
                        + " | shrinkage, radial of pear is not known; give the wood one in %"
            })
    void plan_statesWhatHasNoAnswer(String given, String other, CheckCode code, Outcome outcome, String sentence) {
        Plan plan = NeckFile.parse("neck.yaml", GOOD.replace(given, other)).plan();
        PlanCheck check = plan.check(code).orElseThrow();

        assertThat(check.outcome()).isEqualTo(outcome);
        assertThat(check.found()).startsWith(sentence);
        assertThat(plan.neckSet()).isPresent();
    }
}
