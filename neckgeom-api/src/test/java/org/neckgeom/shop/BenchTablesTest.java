package org.neckgeom.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.neckgeom.units.ShopUnits.gigapascal;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.mmPerMinute;
import static org.neckgeom.units.ShopUnits.percent;
import static org.neckgeom.units.ShopUnits.rpm;
import static org.neckgeom.units.ShopUnits.thou;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Json;
import org.neckgeom.form.Tree;
import org.neckgeom.stock.Blank;
import org.neckgeom.stock.Wood;
import org.neckgeom.stock.WoodFigure;
import org.neckgeom.table.Spelling;
import org.neckgeom.table.Table;
import org.neckgeom.table.Type;
import org.neckgeom.table.Types;
import org.neckgeom.testing.OneKey;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/** Bench and stock written by their keys and read back, in both spellings; what the keys refuse, and where. */
class BenchTablesTest {

    private static final Cutter CUTTER = Cutter.straight(mm(6))
            .flutes(2, mm(22))
            .shank(mm(12.7))
            .stickOut(mm(30))
            .carbide()
            .runout(mm(0.02));

    private static <T> void add(List<Arguments> all, Table<T> table, List<T> nouns) {
        nouns.forEach(noun -> all.add(Arguments.of(Types.group(table), noun)));
    }

    static Stream<Arguments> nouns() {
        List<Arguments> all = new ArrayList<>();
        add(all, Cutter.TABLE, List.of(Cutter.straight(mm(6)), CUTTER, Cutter.straight(inch("1/4"))));
        add(
                all,
                Fence.TABLE,
                List.of(
                        Fence.onePiece(mm(600)),
                        Fence.split(inch(24), thou(4)),
                        Fence.split(mm(600), mm(-0.1)).gap(mm(0)),
                        Fence.pivoting(mm(600)).fromPivot(mm(300), mm(570))));
        add(
                all,
                FeelerSet.TABLE,
                List.of(
                        FeelerSet.metric20().halfWidth(mm(0.005)),
                        FeelerSet.metric13(),
                        FeelerSet.inch26(),
                        FeelerSet.of(List.of(thou(4), mm(0.3)))));
        BenchUncertainty bench = BenchUncertainty.withDefaults();
        add(
                all,
                BenchUncertainty.TABLE,
                List.of(
                        bench,
                        bench.repeatability(mm(0.02))
                                .resolution(mm(0.01))
                                .calliperZero(mm(0))
                                .blankCalliperZero(mm(0.02))
                                .cutScatter(mm(0.015), 10)
                                .moveScatter(thou(1)),
                        bench.cutScatter(mm(BenchUncertainty.DEFAULT_CUT_SCATTER_MM))));
        DecisionRule rule = DecisionRule.withDefaults()
                .conformanceProbability(percent(90))
                .spoiledNeck(300)
                .readingAgain(1.0 / 3)
                .trialCut(0)
                .fenceMove(1e-5);
        add(all, DecisionRule.TABLE, List.of(DecisionRule.withDefaults(), rule));
        add(
                all,
                Shop.TABLE,
                List.of(
                        Shop.with(CUTTER),
                        Shop.with(Cutter.straight(inch("1/4"))),
                        Shop.with(CUTTER)
                                .fence(Fence.onePiece(mm(900)))
                                .feelerGauges(FeelerSet.metric13())
                                .repeatability(mm(0.02))
                                .decision(rule)
                                .passes(mm(1.5), mm(0.5))
                                .feed(mmPerMinute(1800), rpm(16000))));
        add(
                all,
                TrialCut.TABLE,
                List.of(
                        TrialCut.walls(mm(29.84), mm(31.26)),
                        TrialCut.walls(List.of(inch(1.2), inch(1.3)), List.of(mm(100.0 / 3)))
                                .slot(mm(6.02))
                                .piece(List.of(mm(68), mm(68.1)))
                                .rippedWithBlank(mm(0.04))
                                .repeatability(thou(1))
                                .wallsCorrelated(-1.0 / 3)));
        add(
                all,
                Blank.TABLE,
                List.of(
                        Blank.ofLength(mm(640)).section(mm(61), mm(20)),
                        Blank.ofLength(inch(36))
                                .section(inch(2.75), inch("1 3/64"))
                                .outOfParallel(thou(-3))
                                .nutAt(inch(9))
                                .endAllowance(mm(0))
                                .edgeAllowance(mm(2))
                                .planing(mm(0.5))
                                .sawKerf(mm(1.8))));
        return all.stream();
    }

    static Stream<Arguments> woods() {
        Wood walnut = Wood.BLACK_WALNUT;
        List<Wood> own = List.of(
                walnut.withName("tested walnut"),
                walnut.withName("tested walnut").modulus(gigapascal(12.4)),
                walnut.modulus(gigapascal(12.4)).modulusVariation(percent(4)),
                walnut.bendingStrength(ShopUnit.MEGAPASCAL.of(100.0 / 3)),
                walnut.changePerPercent(0.0019, 1.0 / 300),
                walnut.shrinkage(percent(16.0 / 3), percent(7.8)),
                Wood.named("offcut"),
                Wood.named("offcut").density(ShopUnit.KG_PER_M3.of(1000.0 / 3)),
                Wood.of("bare", "Lignum ignotum", List.of()),
                Wood.of("heavy", "", List.of(figure(WoodFigure.Kind.DENSITY, 21_450))),
                Wood.of("small", "", List.of(figure(WoodFigure.Kind.RADIAL_CHANGE, 1.234e-7))));
        return Stream.concat(Wood.listed().stream(), own.stream()).map(wood -> Arguments.of(Wood.TYPE, wood));
    }

    private static WoodFigure figure(WoodFigure.Kind kind, double value) {
        return new WoodFigure(kind, value, "a reader's table", WoodFigure.Standing.OWN);
    }

    @ParameterizedTest
    @MethodSource({"nouns", "woods"})
    <T> void noun_readsBackFromBothSpellings(Type<T> type, T noun) {
        for (Spelling spelling : Spelling.values()) {
            OneKey<T> key = new OneKey<>(type);
            Tree written = key.written(noun, spelling);
            T read = key.read(Json.read(Json.of(written)));

            assertThat(read).as("%s", written).isEqualTo(noun).hasToString(noun.toString());
            assertThat(key.written(read, spelling)).isEqualTo(written);
        }
    }

    /** What a maker wrote is what is written again: a listed wood by its name, one like it in a few keys. */
    @Test
    void wood_isWrittenInTheFewestKeys() {
        assertThat(new OneKey<>(Wood.TYPE).written(Wood.SAPELE, Spelling.WORDS).plain())
                .isEqualTo("sapele");
        assertThat(Json.of(new OneKey<>(Wood.TYPE)
                        .written(Wood.SAPELE.withName("mine").modulus(gigapascal(11)), Spelling.WORDS)))
                .isEqualToIgnoringWhitespace("{\"name\": \"mine\", \"like\": \"sapele\", \"modulus\": \"11 GPa\"}");
    }

    @Test
    void usualGapAndLeaves_areThoseOfTheUnitGiven_inAnyStyle() {
        Fence split = inMillimetres(Fence.TABLE, Fence.split(inch(24), thou(4)));
        Shop shop = inMillimetres(Shop.TABLE, Shop.with(Cutter.straight(inch("1/4"))));

        assertThat(split.gapMm()).isEqualTo(19.05); // 3/4 in
        assertThat(split.style()).isEqualTo(LengthStyle.MILLIMETRES);
        assertThat(shop.feelerGauges()).isEqualTo(FeelerSet.inch26());
        assertThat(shop.feelerGauges().stampedIn()).isEqualTo(LengthStyle.DECIMAL_INCHES);
    }

    private static <T> T inMillimetres(Table<T> table, T noun) {
        return table.read(table.write(noun, Spelling.WORDS, LengthStyle.MILLIMETRES));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "fence: {kind: split, length: 600 mm} | fence.out of line | out of line is missing; a split fence needs it",
                "fence: {kind: one piece, length: 600 mm, gap: 2 mm} | fence.gap | gap is given, but a fence in one piece has none",
                "fence: {kind: pivoting, length: 600 mm, cutter from pivot: 601 mm, stop from pivot: 570 mm} | fence.cutter from pivot | be 600 mm or less, the fence's length",
                "cutter scatter: 1 mm | cutter scatter | is not a known key",
                "cut scatter from: 10 | cut scatter from | cut scatter from is given, but not the cut scatter",
                "feed: 1800 mm/min | turning | must be given together",
                "last pass: 2 mm | last pass | be 1.5 mm or less, the deepest pass",
                "feeler gauges: {half-width: 0.01 mm} | feeler gauges.set | either set or gauges must be given",
                "feeler gauges: {set: metric 20, half-width: 0.05 mm} | feeler gauges.half-width | be less than 0.05 mm, the thinnest gauge"
            })
    void shop_refusesWhatDoesNotGoTogether_withItsPath(String more, String path, String words) {
        String yaml = "{cutter: {diameter: 6 mm}, " + more + "}";
        // Flow YAML with every word quoted is JSON.
        String json = yaml.replaceAll("([^{}:,]+)", "\"$1\"").replaceAll("\" *([^\"]*?) *\"", "\"$1\"");

        assertThatThrownBy(() -> Shop.TABLE.read(Json.read(json.replace("\"\"", ""))))
                .isInstanceOfSatisfying(Refusal.class, refused -> {
                    assertThat(refused.faults()).hasSize(1);
                    assertThat(refused.faults().get(0).path()).isEqualTo(path);
                    assertThat(refused.faults().get(0).must()).contains(words);
                });
    }
}
