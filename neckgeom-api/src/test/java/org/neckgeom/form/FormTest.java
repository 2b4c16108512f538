package org.neckgeom.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.neckgeom.units.LengthStyle.DECIMAL_INCHES;
import static org.neckgeom.units.LengthStyle.INCH_FRACTIONS;
import static org.neckgeom.units.LengthStyle.MILLIMETRES;
import static org.neckgeom.units.ShopUnits.celsius;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.percent;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.measure.Decision;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Interval;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.text.Names;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/** A form writes what {@code LengthStyle}, {@code Numbers} and {@code Report} write, and refuses what it cannot. */
class FormTest {

    private enum Side {
        NEAR_SIDE,
        FAR_SIDE
    }

    private record Hole(int number, double mm) {
        static final Form<Hole> FORM = Form.<Hole>of("hole")
                .fact("number", Kind.WHOLE, "which", Hole::number)
                .fact("place", Kind.MM, "from the end", Hole::mm)
                .finds("hole", "hole {number} at {place:brief}");
    }

    /** An invented answer with a fact of every kind. */
    private record Board(double widthMm, double uMm, Side side, List<Hole> holes, Optional<Double> chamferMm)
            implements Answer {

        static final Form<Board> FORM = Form.<Board>of("board")
                .fact("width", Kind.MM, "across", Board::widthMm)
                .fact("measured", Kind.ESTIMATE, "across, as read", Board::measured)
                .fact("side", Kind.code(Side.class), "which side", Board::side)
                .fact("holes", Kind.table(Hole.FORM), "drilled", Board::holes)
                .fact(
                        "places",
                        Kind.list(Kind.MM),
                        "of the holes",
                        b -> b.holes.stream().map(Hole::mm).toList())
                .factIfAny("chamfer", Kind.MM, "of the edge", Board::chamferMm)
                .fact("allowed", Kind.LIMITS, "of the width", b -> Limits.within(mm(70)))
                .fact("verdict", Kind.VERDICT, "on the width", b -> Verdict.of(b.measured(), Limits.within(mm(70))))
                .fact("spread", Kind.SPREAD, "of the width", b -> ErrorDistribution.rectangular(mm(b.uMm + 1)))
                .fact("share", Kind.RATIO, "of the whole", b -> 0.4567)
                .fact("chance", Kind.PROBABILITY, "of a fit", b -> 0.9998)
                .fact("force", Kind.AMOUNT, "to bend it", b -> newton(12.5))
                .fact("trials", Kind.WHOLE, "drawn", b -> 1_234_567)
                .fact("owner", Kind.NAME, "who gave it", b -> "A {brace} and a, comma")
                .fact("planed", Kind.FLAG, "whether planed", b -> true)
                .fact("never", Kind.MM, "not there", b -> Double.NaN)
                .phrase("edge", ", chamfer {chamfer:brief}")
                .phrase("edge", b -> b.widthMm > 50, ", wide")
                .findsOnly("no-holes", b -> b.holes.isEmpty(), "board without holes{edge}")
                .finds("board", "board {width:brief} wide{edge}: {holes:finding}{trials:of trial/trials}")
                .row("thick", "thick", Kind.MM, "of the board", b -> 6.0)
                .each("holes", "hole {number}", "{place:text} from the end", 2, "and {more:of hole/holes} more")
                .line("gone", "gone", "{never}")
                .note("owner", "of {owner}")
                .note("wide", b -> b.widthMm > 50, "wide by {width:size text}")
                .note("gone", "gone by {chamfer:brief}");

        Estimate<Length> measured() {
            return Estimate.of(mm(widthMm), mm(uMm));
        }

        @Override
        public Form<Board> form() {
            return FORM;
        }

        @Override
        public LengthStyle style() {
            return MILLIMETRES;
        }
    }

    private static final Board PLAIN = new Board(
            60.5, 0.02, Side.FAR_SIDE, List.of(new Hole(1, 10), new Hole(2, 20), new Hole(3, 30.25)), Optional.empty());

    @Test
    void text_isLaidOutAsAReport() {
        String holes = "hole 1 at 10 mm, hole 2 at 20 mm, hole 3 at 30.25 mm";
        String expected = Report.titled("board 60.5 mm wide, wide: " + holes + "1234567 trials")
                .row("thick", "6 mm")
                .row("hole 1", "10.000 mm from the end")
                .row("hole 2", "20.000 mm from the end")
                .note("and 1 hole more")
                .note("of A {brace} and a, comma")
                .note("wide by 60.500 mm")
                .toString();

        assertThat(PLAIN.text(MILLIMETRES)).isEqualTo(expected);
        assertThat(Board.FORM.render(PLAIN, MILLIMETRES)).hasToString(expected);
        assertThat(Board.FORM.whole(PLAIN, MILLIMETRES))
                .contains("\n  hole 3  30.250 mm from the end")
                .doesNotContain("more");
    }

    /** A unit is left out only where it is the same; what was given stays in its unit. */
    @Test
    void after_andGiven_followTheUnit() {
        Form<double[]> form = Form.<double[]>of("after")
                .fact("x", Kind.MM, "a length", x -> x[0])
                .fact("y", Kind.MM, "another", x -> x[1])
                .fact("read", Kind.AMOUNT, "as it was read", x -> inch(0.25))
                .finds("after", "{x:text}, {y:text after x}, {read:given}");

        assertThat(form.text(new double[] {25.4, 50.8}, DECIMAL_INCHES)).isEqualTo("1.0000 in, 2.0000, 0.25 in");
        assertThat(form.text(new double[] {25.4, 0.254}, DECIMAL_INCHES)).isEqualTo("1.0000 in, 10.0 thou, 0.25 in");
        assertThat(form.text(new double[] {25.4, 0.254}, MILLIMETRES)).isEqualTo("25.400 mm, 0.254, 0.25 in");
    }

    @Test
    void probability_canHaveItsSignificantDigits() {
        Form<Double> form = Form.<Double>of("odds")
                .fact("odds", Kind.PROBABILITY, "of a slip", odds -> odds)
                .finds("odds", "{odds}, {odds:percent digits 2}");

        assertThat(form.text(0.00012345, MILLIMETRES)).isEqualTo("below 0.1 %, 0.012 %");
    }

    @Test
    void findsOnly_writesNoRows() {
        Board bare = new Board(40, 0, Side.NEAR_SIDE, List.of(), Optional.of(1.5));

        assertThat(bare.text(MILLIMETRES)).isEqualTo("board without holes, chamfer 1.5 mm");
        assertThat(Board.FORM.render(bare, MILLIMETRES).code()).isEqualTo("no-holes");
    }

    /** The ways to print a length are those of the style, at random lengths. */
    @Test
    void ways_areThoseOfTheStyle() {
        Form<double[]> form = Form.<double[]>of("ways")
                .fact("x", Kind.MM, "a length", x -> x[0])
                .fact("u", Kind.MM, "its uncertainty", x -> x[1])
                .fact("e", Kind.ESTIMATE, "both", x -> Estimate.of(mm(x[0]), mm(x[1])))
                .finds(
                        "ways",
                        "{x:text}|{x:brief}|{x:size small}|{x:mark}|{x:size beside u}|{e:size value}|{e:u}|{x:table brief}|{x}");
        SplittableRandom random = new SplittableRandom(17);
        for (int i = 0; i < 3000; i++) {
            double x = random.nextDouble(-1, 1) * Math.pow(10, random.nextInt(-4, 4));
            double u = random.nextDouble(0.001, 0.1);
            for (LengthStyle style : LengthStyle.values()) {
                assertThat(form.text(new double[] {x, u}, style))
                        .as("length %s, u %s", x, u)
                        .isEqualTo(String.join(
                                "|",
                                style.text(x),
                                style.brief(x),
                                style.small(Math.abs(x)),
                                style.mark(x),
                                style.text(Math.abs(x), u),
                                style.text(Math.abs(x), u),
                                style.small(u),
                                style.inTables().brief(x),
                                mm(x).in(style).toString()));
            }
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "{share:1}; 0.5",
                "{share:percent 1}; 45.7 %",
                "{share:percent ..3}; 45.67 %",
                "{share:percent 1 bare}; 45.7",
                "{chance}; more than 99.9 %",
                "{force}; 12.5 N",
                "{force:0}; 13 N",
                "{force:0 bare}; 13",
                "{force:digits 2}; 13 N",
                "{trials:grouped}; 1,234,567",
                "{holes:first 1}; hole 1 at 10 mm",
                "{places:brief first 2}; 10 mm, 20 mm",
                "{places:1 first 2 once}; 10.0, 20.0 mm and 1 more",
                "{places:2|3 once}; 10.00, 20.00, 30.25 mm",
                "{places:once}; 10, 20, 30.25 mm",
                "{places:given first 2 once}; 10, 20 mm and 1 more",
                "{places:brief or}; 10 mm, 20 mm or 30.25 mm",
                "{places:brief first 2 and}; 10 mm and 20 mm",
                "{places:brief first 1 and}; 10 mm",
                "{width:beside measured}; 60.500 mm",
                "{width:text} of {thick:text after width}; 60.500 mm of 6.000",
                "{thick:given}; 6 mm",
                "{side}; far side",
                "{planed}; yes",
                "{allowed}; within 70 mm",
                "{measured}; 60.500 mm, u 0.020 mm",
            })
    void way_printsAFact(String words, String expected) {
        assertThat(Board.FORM
                        .finds("other", words)
                        .phrase("only", words)
                        .note("only", "{only}")
                        .text(PLAIN, MILLIMETRES))
                .endsWith("\n  " + expected);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{nothing}",
                "{width",
                "{width:loud}",
                "{width:beside nothing}",
                "{width:after nothing}",
                "{width:bare brief}",
                "{places:brief once}",
                "{places:bare}",
                "{owner:brief}",
                "{trials:of pass}",
                "{width:digits}",
                "{owner:cut}",
                "{owner:cut 0}",
                "{chance:2}",
                "{}"
            })
    void brace_thatNamesNoFactOrNoWayIsRefused(String words) {
        assertThatThrownBy(() -> Board.FORM.note("wrong", words))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("form of \"board\" must ");
    }

    @Test
    void keys_areCheckedAndGivenOnce() {
        assertThatThrownBy(() -> Board.FORM.fact("width", Kind.MM, "again", Board::widthMm))
                .hasMessageContaining("given once");
        assertThatThrownBy(() -> Board.FORM.fact("text", Kind.MM, "taken", Board::widthMm))
                .hasMessageContaining("given once");
        assertThatThrownBy(() -> Board.FORM.fact("Two words", Kind.MM, "no key", Board::widthMm))
                .hasMessageContaining("two-words");
        assertThatThrownBy(() -> Form.of("Board")).hasMessageContaining("two-words");
        assertThatThrownBy(() -> Board.FORM.each("width", "", "")).hasMessageContaining("rows of a table");
        assertThatThrownBy(() -> Board.FORM.finds("NOT_A_CODE", "")).hasMessageContaining("two-words");
    }

    @Test
    void notesOfATable_areCutAtMostButNotInTheWhole() {
        Form<List<Hole>> form = Form.<List<Hole>>of("holes")
                .fact("holes", Kind.table(Hole.FORM), "drilled", holes -> holes)
                .finds("holes", "Holes")
                .noteEach("holes", "drill {place:brief}", 2, "and {more} more");
        List<Hole> three = List.of(new Hole(1, 10), new Hole(2, 20), new Hole(3, 30));

        assertThat(form.text(three, MILLIMETRES)).isEqualTo("Holes\n  drill 10 mm\n  drill 20 mm\n  and 1 more");
        assertThat(form.whole(three, MILLIMETRES)).endsWith("drill 20 mm\n  drill 30 mm");
        assertThat(form.text(three.subList(0, 2), MILLIMETRES)).isEqualTo("Holes\n  drill 10 mm\n  drill 20 mm");
        assertThatThrownBy(() -> form.noteEach("holes", "", 0, ""))
                .hasMessage("most notes must be 1 or more, but were 0");
    }

    @Test
    void schema_listsTheCodesOfNotes() {
        assertThat(notesOf(Hole.FORM.note("deep", "deep").note("late", "late")))
                .isEqualTo(Map.of("type", "array", "items", Map.of("enum", List.of("deep", "late"))));
        assertThat(notesOf(Hole.FORM)).as("no notes in the data either").isNull();
    }

    private static Object notesOf(Form<?> form) {
        return ((Map<?, ?>) form.schema().get("properties")).get("notes");
    }

    @Test
    void facts_areAskedForOnce() {
        int[] asked = {0};
        Form<int[]> form = Form.<int[]>of("once")
                .fact("slow", Kind.WHOLE, "counted", count -> ++count[0])
                .finds("once", "{slow} {slow}")
                .note("again", "{slow}");

        assertThat(form.text(asked, MILLIMETRES)).isEqualTo("1 1\n  1");
    }

    @Test
    void data_hasFactsWithUnitsCodesAndText() {
        Map<String, Object> data = Board.FORM.data(PLAIN, DECIMAL_INCHES);

        assertThat(data)
                .containsEntry("answer", "board")
                .containsEntry("side", "far-side")
                .containsEntry("finding", "board")
                .containsEntry("notes", List.of("more", "owner", "wide"))
                .containsEntry("trials", 1_234_567L)
                .containsEntry("text", PLAIN.text(DECIMAL_INCHES))
                .doesNotContainKeys("chamfer", "never");
        assertThat(Json.of(data.get("width")).replaceAll("\\s+", " "))
                .isEqualTo("{ \"value\": " + 60.5 / 25.4 + ", \"unit\": \"in\", \"ucum\": \"[in_i]\" } ");
        assertThat(Json.of(Board.FORM.data(PLAIN, INCH_FRACTIONS).get("width"))).isEqualTo(Json.of(data.get("width")));
        assertThat(Json.of(Board.FORM.data(PLAIN, MILLIMETRES).get("verdict")).replaceAll("\\s+", " "))
                .contains("\"value\": 60.5", "\"standardUncertainty\": 0.02", "\"unit\": \"mm\"")
                .contains("\"limits\": { \"lower\": -70, \"upper\": 70, \"unit\": \"mm\", \"ucum\": \"mm\" }")
                .contains("\"conformanceProbability\": 1", "\"verdict\": \"" + Kind.codeOf(Decision.WITHIN) + "\"");
        assertThat(Json.of(PLAIN)).isEqualTo(Json.of(Board.FORM.data(PLAIN, MILLIMETRES)));
    }

    /** A difference of temperatures has no zero elsewhere: 0.5 degC are 0.9 degF wide. */
    @Test
    void data_ofATemperatureKeepsItsUncertaintyADifference() {
        Form<String> form = Form.<String>of("weather")
                .fact(
                        "air",
                        Kind.ESTIMATE,
                        "of the room",
                        x -> Estimate.ofLibrary(20, 0.5, Double.POSITIVE_INFINITY, ShopUnit.FAHRENHEIT))
                .fact("wood", Kind.AMOUNT, "of the wood", x -> celsius(20));

        assertThat(Json.of(form.data("", MILLIMETRES)).replaceAll("\\s+", " "))
                .contains(
                        "\"value\": 68,", "\"standardUncertainty\": 0.9", "\"unit\": \"degF\"", "\"ucum\": \"[degF]\"")
                .contains("\"wood\": { \"value\": 20, \"unit\": \"degC\", \"ucum\": \"Cel\" }");
    }

    @Test
    void csv_hasAColumnForEachFactWithItsUnit() {
        assertThat(Hole.FORM.csv(PLAIN.holes(), MILLIMETRES))
                .isEqualTo("number,place (mm)\r\n1,10\r\n2,20\r\n3,30.25\r\n");
        assertThat(Board.FORM.csv(List.of(PLAIN), MILLIMETRES).lines().toList().get(0))
                .contains("width (mm),measured (mm),measured.standardUncertainty (mm),side,allowed.lower (mm)")
                .contains("verdict.conformanceProbability,verdict.verdict");
        assertThat(Board.FORM.csv(List.of(PLAIN), MILLIMETRES)).contains("\"A {brace} and a, comma\"");
    }

    @Test
    void schema_hasALineForEachKind() {
        assertThat(Json.of(Board.FORM.schema()).replaceAll("\\s+", " "))
                .contains("\"width\": { \"description\": \"across\", \"$ref\": \"#/$defs/quantity\" }")
                .contains("\"enum\": [ \"near-side\", \"far-side\" ]")
                .contains("\"items\": { \"$ref\": \"#/$defs/hole\" }")
                .contains("\"hole\": { \"type\": \"object\"");
    }

    /** A maker who gave inches reads inches, and thou only where the style is another. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "{width:own fine digits 2}; 0.50 in; 13 mm; 500 thou",
                "{width:own}; 0.5 in; 12.7 mm; 1/2 in",
                "{width:own fine beside read}; 0.500 in; 12.70 mm; 500 thou",
                "{read:own fine}; 0.500 in, u 0.010 in; 12.70 mm, u 0.25 mm; 500 thou, u 10 thou",
                "{read:own fine value}; 0.500 in; 12.70 mm; 500 thou",
                "{read:own fine u}; 0.010 in; 0.25 mm; 10 thou",
                "{read:own fine deviation}; 0.010 in; 0.25 mm; 10 thou",
                "{exact:deviation}; 0.000 in; 0.000 mm; 0.000 in",
                "{allowed:own fine}; within 0.5 in; within 12.7 mm; within 500 thou",
                "{interval:own fine}; 0.250 to 0.500 in; 6.35 to 12.70 mm; 250.0 to 500.0 thou",
                "{angle:own fine 1}; 2.0 deg; 2.0 deg; 2.0 deg",
            })
    void own_keepsTheUnitGivenWhereTheStyleHasIt(String words, String inches, String millimetres, String fractions) {
        Form<String> form = Form.<String>of("own")
                .fact("width", Kind.AMOUNT, "across", x -> inch(0.5))
                .fact("read", Kind.ESTIMATE, "across, as read", x -> Estimate.of(inch(0.5), inch(0.01)))
                .fact("exact", Kind.ESTIMATE, "across, exactly", x -> Estimate.of(inch(0.5), inch(0.0)))
                .fact("allowed", Kind.LIMITS, "across", x -> Limits.within(inch(0.5)))
                .fact("interval", Kind.INTERVAL, "across", x -> Interval.of(inch(0.25), inch(0.5)))
                .fact("angle", Kind.AMOUNT, "of the edge", x -> deg(2))
                .finds("own", words);

        assertThat(form.text("", DECIMAL_INCHES)).isEqualTo(inches);
        assertThat(form.text("", MILLIMETRES)).isEqualTo(millimetres);
        assertThat(form.text("", INCH_FRACTIONS)).isEqualTo(fractions);
    }

    /** 26.700000000000003 % and 26.7 % are the same double as a ratio; 25.4 mm are one inch. */
    @Test
    void data_ofEqualAmounts_areEqual_inWhicheverDigitsEachWasGiven() {
        Form<Amount<?>> form = Form.<Amount<?>>of("amount").fact("amount", Kind.AMOUNT, "any", x -> x);

        assertThat(percent(26.700000000000003)).isEqualTo(percent(26.7));
        assertThat(Json.of(form.data(percent(26.700000000000003), MILLIMETRES)))
                .isEqualTo(Json.of(form.data(percent(26.7), MILLIMETRES)))
                .contains("\"value\": 26.7,");
        assertThat(Json.of(form.data(mm(25.4), DECIMAL_INCHES))).contains("\"value\": 1,");
    }

    /** JShell prints so much of a value; a row of a larger text is whole however long it is. */
    @Test
    void row_isWholeWhereItsAnswerPrintsCut() {
        String words = "a long word ".repeat(200).strip();
        RenderedAnswer answer = RenderedAnswer.words(words);

        assertThat(answer.toString()).hasSizeLessThan(1_000).endsWith("rows() and notes() have all");
        assertThat(new RenderedAnswer.Row("words", "words", answer).text()).isEqualTo(words);
    }

    @Test
    void each_writesAsManyRowsAsTheAnswerHasRoomFor() {
        Form<Board> form = Form.<Board>of("rows")
                .fact("holes", Kind.table(Hole.FORM), "drilled", Board::holes)
                .finds("rows", "rows")
                .each("holes", "hole", "{number}", board -> (int) (board.uMm() * 100), "and {more} more");

        assertThat(form.text(PLAIN, MILLIMETRES)).isEqualTo("rows\n  hole  1\n  hole  2\n  and 1 more");
        assertThat(form.whole(PLAIN, MILLIMETRES)).endsWith("hole  3");
    }

    @Test
    void laidOut_hasItsOwnTextInDataAsWell() {
        Form<Board> form = Board.FORM.laidOut((board, style) -> "wide: " + style.brief(board.widthMm()));

        assertThat(form.text(PLAIN, MILLIMETRES)).isEqualTo("wide: 60.5 mm");
        assertThat(form.data(PLAIN, MILLIMETRES)).containsEntry("text", "wide: 60.5 mm");
        assertThat(form.render(PLAIN, MILLIMETRES).finding()).startsWith("board 60.5 mm wide");
    }

    @Test
    void row_thatIsOneWholeAnswer_hasItInside() {
        Form<Board> form = Form.<Board>of("shelf")
                .fact("board", Kind.answer(Board.FORM), "of it", board -> board)
                .fact("any", Kind.ANSWER, "of it", board -> board)
                .fact("own", Kind.answer(Board.FORM.laidOut((board, style) -> "own\nlines")), "of it", board -> board)
                .finds("shelf", "shelf")
                .line("one", "one", "{board}")
                .line("two", "two", "{any:whole}")
                .line("line", "line", "{board:finding}")
                .line("words", "words", "of {board}")
                .line("own", "own", "{own}");
        List<RenderedAnswer.Row> rows = form.render(PLAIN, MILLIMETRES).rows();

        RenderedAnswer board = Board.FORM.render(PLAIN, MILLIMETRES);
        assertThat(rows.get(0).answer()).isEqualTo(board);
        assertThat(rows.get(0).text()).isEqualTo(Board.FORM.text(PLAIN, MILLIMETRES));
        assertThat(rows.get(1).answer().rows()).hasSize(board.rows().size() + 1);
        assertThat(rows.get(1).text()).isEqualTo(Board.FORM.whole(PLAIN, MILLIMETRES));
        assertThat(rows.subList(2, 5))
                .allSatisfy(row -> assertThat(row.answer()).isEqualTo(RenderedAnswer.words(row.text())));
        assertThat(rows.get(4).text()).isEqualTo("own\nlines");
    }

    @Test
    void finding_thatIsOneWholeAnswer_hasItsRowsAndNotes() {
        Statement statement =
                Statement.of("every-hole", "{board:whole}", MILLIMETRES).with("board", Kind.ANSWER, PLAIN);
        RenderedAnswer board = Board.FORM.render(PLAIN, MILLIMETRES);
        RenderedAnswer rendered = statement.rendered(MILLIMETRES);

        assertThat(rendered.code()).isEqualTo("every-hole");
        assertThat(rendered.finding()).isEqualTo(board.finding());
        assertThat(rendered.rows()).hasSize(board.rows().size() + 1);
        assertThat(statement.text(MILLIMETRES)).isEqualTo(Board.FORM.whole(PLAIN, MILLIMETRES));
    }

    @Test
    void capital_beginsASentence() {
        Statement statement =
                Statement.of("sentence", "{board:capital}.", MILLIMETRES).with("board", Kind.ANSWER, PLAIN);

        assertThat(statement.text(MILLIMETRES)).startsWith("Board 60.5 mm wide").endsWith("trials.");
    }

    @Test
    void shortList_isAsLongAsALine() {
        List<String> names = Collections.nCopies(9, "twenty letters of it");
        Form<List<String>> form = Form.<List<String>>of("names")
                .fact("names", Kind.shortList(Kind.NAME), "given", x -> x)
                .finds("names", "{names}");

        assertThat(form.text(names, MILLIMETRES))
                .isEqualTo(Names.shortList(names))
                .endsWith(" and 4 more");
        assertThat(form.data(names, MILLIMETRES)).containsEntry("names", names);
        assertThat(form.phrase("all", ": {names}").finds("none", "none{all}").text(List.of(), MILLIMETRES))
                .isEqualTo("none");
    }

    @Test
    void ownKind_writesWhatNoOtherDoes() {
        Kind<double[]> pair = Kind.own(
                (ends, style) -> style.brief(ends[0]) + " x " + style.brief(ends[1]),
                (ends, style) -> List.of(Json.number(ends[0]), Json.number(ends[1])),
                Map.of("type", "array"));
        Form<double[]> form =
                Form.<double[]>of("pair").fact("size", pair, "both", x -> x).finds("pair", "{size}");

        assertThat(form.text(new double[] {25.4, 50.8}, DECIMAL_INCHES)).isEqualTo("1 in x 2 in");
        assertThat(Json.of(form.data(new double[] {1, 2.5}, MILLIMETRES))).contains("\"size\": [ 1, 2.5 ]");
    }

    @Test
    void anyKind_isWrittenAsWhatTheValueIs() {
        Form<Object> form =
                Form.of("thing").fact("thing", Kind.ANY, "any", x -> x).finds("thing", "it is {thing:cut 12}");

        assertThat(form.text(mm(25.4), DECIMAL_INCHES)).isEqualTo("it is 1 in");
        assertThat(form.text(Limits.within(mm(25.4)), DECIMAL_INCHES)).isEqualTo("it is within 1 in");
        assertThat(form.text(PLAIN, DECIMAL_INCHES)).isEqualTo("it is board 2.3819...");
        assertThat(form.text("twelve chars\nand a line", MILLIMETRES)).isEqualTo("it is twelve chars");
        assertThat(form.text("", MILLIMETRES)).isEqualTo("it is ");
        assertThat(form.data(PLAIN, DECIMAL_INCHES)).containsEntry("thing", Board.FORM.data(PLAIN, DECIMAL_INCHES));
        assertThat(thing(form, newton(12.5))).isEqualTo(Map.of("value", Json.number(12.5), "unit", "N", "ucum", "N"));
        assertThat(thing(form, 0.5)).isEqualTo(Json.number(0.5));
        assertThat(thing(form, 7)).isEqualTo(7);
        assertThat(thing(form, true)).isEqualTo(true);
        assertThat(thing(form, Side.FAR_SIDE)).isEqualTo("FAR_SIDE");
        assertThat(thing(form, "two\nlines")).isEqualTo("two\nlines");
        assertThat(thing(form, new StringBuilder("two\nlines"))).isEqualTo("two");
        assertThat(thing(form, Limits.within(mm(25.4)))).isEqualTo("within 1 in");
    }

    private static Object thing(Form<Object> form, Object value) {
        return form.data(value, DECIMAL_INCHES).get("thing");
    }

    @Test
    void cut_leavesOutWhatIsLongerThanItsLetters() {
        Form<String> form = Form.<String>of("name")
                .fact("name", Kind.NAME, "any", x -> x)
                .fact("names", Kind.list(Kind.NAME), "twice", x -> List.of(x, "b"))
                .finds("name", "{name:cut 100}, {names:cut 3}");

        assertThat(form.text("x".repeat(100), MILLIMETRES)).isEqualTo("x".repeat(100) + ", xxx..., b");
        assertThat(form.text("x".repeat(101), MILLIMETRES)).isEqualTo("x".repeat(100) + "..., xxx..., b");
    }

    @Test
    void trimmed_hasItsOwnDecimalsForInches() {
        Form<Double> form =
                Form.<Double>of("length").fact("length", Kind.MM, "any", x -> x).finds("length", "{length:..1|3 bare}");

        assertThat(form.text(12.34, MILLIMETRES)).isEqualTo("12.3");
        assertThat(form.text(2.54, DECIMAL_INCHES)).isEqualTo("0.1");
        assertThat(form.text(31.4, DECIMAL_INCHES)).isEqualTo("1.236"); // 1.23622 in
    }
}
