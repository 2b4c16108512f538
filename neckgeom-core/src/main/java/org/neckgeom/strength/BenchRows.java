package org.neckgeom.strength;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import org.neckgeom.fault.Refusal;
import org.neckgeom.stock.Wood;
import org.neckgeom.text.Numbers;

/** Readings of stiffness as rows over the causes, each beside the expected figure. */
final class BenchRows {

    /** Further from the table than this no wood lies. */
    private static final double MOST_FROM_TABLE = 3;

    private static final double BLANK_U = 0.03;
    private static final double TAP_U = 0.03;
    private static final double WEIGHT_U = 0.02;

    /** What softness along the neck leaves between a weight's shape and the strings'. */
    private static final double SUPPORTED_U = 0.006;

    private static final double CLAMPED_U = 0.010;

    /** What open slots cost is known to this, of itself: slots.csv and more_slots.py over depths of neck. */
    private static final double OPEN_U = 0.1;

    private static final double SHEAR_AREA = 5.0 / 6;

    private final MadeNeck made;
    private final List<Named> rows = new ArrayList<>();

    /** A row with what was read, in words. */
    record Named(String words, double overExpected, CauseState.Row row) {}

    private final Worked worked;

    private BenchRows(MadeNeck made, Worked worked) {
        this.made = made;
        this.worked = worked;
    }

    /** Of a neck of which nothing has been worked out yet. */
    static List<Named> of(MadeNeck made, StiffnessReadings readings) {
        return of(made, readings, new Worked(() -> made));
    }

    /** In one order for readings in any order. */
    static List<Named> of(MadeNeck made, StiffnessReadings readings, Worked worked) {
        BenchRows bench = new BenchRows(made, worked);
        for (BlankBent blank : readings.neckBlanksBent()) {
            bench.neckBlank("neck blank bent", blank.widthMm(), blank.modulusMPa(), blank.uncertainty(), false);
        }
        for (BlankBent blank : readings.boardBlanksBent()) {
            bench.boardBlank("board blank bent", blank.modulusMPa(), blank.uncertainty(), false);
        }
        for (BlankTapped blank : readings.neckBlanksTapped()) {
            bench.neckBlank("neck blank tapped", blank.widthMm(), blank.modulusMPa(), blank.uncertainty(), true);
        }
        for (BlankTapped blank : readings.boardBlanksTapped()) {
            bench.boardBlank("board blank tapped", blank.modulusMPa(), blank.uncertainty(), true);
        }
        readings.shafts().forEach(shaft -> bench.bent("shaft weighed down", false, shaft));
        readings.necks().forEach(neck -> bench.bent("neck weighed down", true, neck));
        readings.reliefChange()
                .ifPresent(change -> bench.relief(
                        change, Math.sqrt(2) * readings.reliefUncertainty().libraryValue()));
        return List.copyOf(bench.rows);
    }

    /** Of strips, a blank has the mean modulus. */
    private void neckBlank(String what, double width, double modulus, double uncertainty, boolean tapped) {
        double[] row = blank(Cause.NECK_WOOD, NeckModel.ofShaft(made.neck(), MadeNeck::pureBending), tapped);
        row[Cause.RUN_OUT.column()] = StrictMath.log(MadeNeck.RUN_OUT);
        double expected = made.beam().back().modulusOfBlank(width);
        add(what, modulus / expected, halfVariance(Cause.NECK_WOOD), row, uncertainty);
    }

    private void boardBlank(String what, double modulus, double uncertainty, boolean tapped) {
        Wood wood = NeckModel.boardWood(made.neck());
        double[] row = blank(Cause.BOARD_WOOD, MadeNeck.pureBending(wood), tapped);
        add(what, modulus / wood.modulusMPa(), halfVariance(Cause.BOARD_WOOD), row, uncertainty);
    }

    private double[] blank(Cause cause, double pureBending, boolean tapped) {
        double[] row = new double[Cause.COUNT];
        row[cause.column()] = made.logDeviation(cause);
        row[Cause.TABLE.column()] = StrictMath.log(pureBending);
        row[Cause.MOISTURE.column()] = StrictMath.log(MadeNeck.MOISTURE);
        row[Cause.BLANK.column()] = BLANK_U;
        row[Cause.TAP.column()] = tapped ? TAP_U : 0;
        return row;
    }

    private double halfVariance(Cause wood) {
        double deviation = made.logDeviation(wood);
        return deviation * deviation / 2;
    }

    private void bent(String what, boolean hasBoard, NeckBent reading) {
        boolean isSupported = reading.held() == NeckBent.Held.SUPPORTED;
        MadeNeck.Effects fall = worked.effects(
                List.of(hasBoard, isSupported),
                () -> MadeNeck.worked(hasBoard ? made : made.withoutBoard(), one -> fall(one, isSupported)));
        double[] row = fall.effects().clone();
        if (!hasBoard) {
            for (Cause none : EnumSet.of(Cause.SLOTS, Cause.ROD, Cause.GLUE, Cause.BOARD, Cause.BOARD_WOOD)) {
                row[none.column()] = 0;
            }
        }
        row[Cause.PLACE.column()] = isSupported ? SUPPORTED_U : CLAMPED_U;
        row[Cause.WEIGHT.column()] = WEIGHT_U;
        double open = reading.isFretted() ? 0 : row[Cause.SLOTS.column()];
        row[Cause.SLOTS.column()] -= open;
        double ratio = reading.readings().perNewton() / fall.value() * StrictMath.exp(-open);
        double uncertainty = StrictMath.hypot(reading.readings().uncertainty(), OPEN_U * open);
        add(what, ratio, halfVariances(row), row, uncertainty);
    }

    private void relief(double change, double uncertainty) {
        double from = made.neck().scale().fretMm(made.neck().bodyAtFret() > 1 ? 1 : 0);
        double to = made.beam().length();
        MadeNeck.Effects relief =
                worked.effects(List.of(from, to), () -> MadeNeck.worked(made, one -> one.relief(from, to)));
        double[] row = relief.effects();
        add("relief at two tensions", change / relief.value(), halfVariances(row), row, uncertainty / change);
    }

    /** The medians of both woods lie below their means, by half the variance of ln E. */
    private double halfVariances(double[] row) {
        double sum = 0;
        for (Cause wood : EnumSet.of(Cause.NECK_WOOD, Cause.BOARD_WOOD)) {
            sum += row[wood.column()] * made.logDeviation(wood) / 2;
        }
        return sum;
    }

    private void add(String what, double ratio, double toMedian, double[] row, double uncertainty) {
        if (!(ratio < MOST_FROM_TABLE && ratio > 1 / MOST_FROM_TABLE)) {
            throw Refusal.of(
                    what,
                    "unlikely",
                    "lie between a third and three times what the woods' table leads to: check span, sizes, weight and"
                            + " fall, or give the wood its own modulus",
                    Numbers.fixed(ratio, 2) + " times that");
        }
        rows.add(new Named(what, ratio, new CauseState.Row(row, StrictMath.log(ratio) + toMedian, uncertainty)));
    }

    /** For one newton: fall midway with its shear, or gap. */
    static double fall(MadeNeck made, boolean isSupported) {
        double from = made.neck().scale().fretMm(1);
        double to = made.beam().length();
        double middle = (from + to) / 2;
        if (!isSupported) {
            Bend bend = made.under(new AtFretOne(from, to));
            return bend.gapAt(bend.deepest(from, to), from, to);
        }
        return made.under(new Midway(from, to)).gapAt(middle, from, to) + shear(made, from, middle) / 2;
    }

    /** {@code int dx/(5/6 G A)} where G is the modulus over 14. */
    static double shear(MadeNeck made, double from, double to) {
        SectionMoments section = new SectionMoments();
        int steps = 40;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            made.beam().section(from + (to - from) * (i + 0.5) / steps, section);
            sum += BlankBent.MODULUS_OVER_SHEAR / (SHEAR_AREA * section.stretchStiffness());
        }
        return sum * (to - from) / steps;
    }

    /** One newton at fret 1 on a neck clamped at the body joint. */
    private record AtFretOne(double start, double end) implements RodPull {

        @Override
        public double moment(double x, double neutralAxis) {
            return Math.max(0, x - start);
        }

        @Override
        public double push(double x) {
            return 0;
        }
    }

    /** One newton midway between supports at fret 1 and body joint. */
    private record Midway(double from, double to) implements RodPull {

        @Override
        public double moment(double x, double neutralAxis) {
            return x < from ? 0 : Math.min(x - from, to - x) / 2;
        }

        @Override
        public double push(double x) {
            return 0;
        }

        @Override
        public double start() {
            return from;
        }

        @Override
        public double end() {
            return (from + to) / 2;
        }
    }
}
