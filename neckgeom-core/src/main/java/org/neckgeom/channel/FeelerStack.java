package org.neckgeom.channel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Json;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Estimate;
import org.neckgeom.shop.FeelerSet;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * A stack of {@index "feeler gauges"} (leaves) nearest a wanted gap, such as a fence move, each leaf used at most once, such as
 * {@code 0.70 leaf, 0.010 mm short}. Immutable.
 *
 * <p>Exact: no other stack of as many leaves or fewer is nearer, and none as near has fewer leaves. Standard
 * uncertainty of a leaf: half-width / sqrt(3) (uniform, GUM 4.3.7); leaves add as the root of the sum of squares.
 */
public final class FeelerStack extends ValueAnswer {

    /** Default of the most leaves in a stack: more bind and spring. */
    public static final int USUAL_LEAVES = 4;

    /** What no fence is set finer than by hand on leaves, common practice: a smaller residual is left alone. */
    static final double FINE_ENOUGH_MM = 0.02;

    /** A sheet of paper, common practice, from memory: measure it. */
    private static final double PAPER_MM = 0.1;

    private static final int MOST_MOVES = 9;

    private static final double EXACT_MM = 5e-7;

    private static final Form<Remedy> REMEDY = left(
                    Form.<Remedy>of("leaf-remedy"), "rest after these moves; positive: short", Remedy::leftMm)
            .fact("fullMoves", Kind.WHOLE, "with the first leaves", Remedy::full)
            .fact("moves", Kind.WHOLE, "of the fence", remedy -> remedy.full + 1)
            .factIfAny("first", Leaves.KIND, "of all moves but the last", r -> Optional.ofNullable(r.first))
            .factIfAny("then", Leaves.KIND, "of the last move", r -> Optional.ofNullable(r.then))
            .fact("paper", Kind.MM, "thickness of a sheet; common practice: measure it", remedy -> PAPER_MM)
            .phrase("times", remedy -> remedy.full > 1, "{fullMoves} times ")
            .phrase("stack", remedy -> !remedy.isShort, " on a thinner stack")
            .phrase("makeUp", "paper or tape, measured (about {paper:small}), makes up for it{stack}")
            .finds(
                    "too-far",
                    remedy -> remedy.full == MOST_MOVES,
                    "too far for leaves: move the fence by a rule first, then cut and read another trial piece")
            .finds("several-moves", remedy -> remedy.full > 0, "in {moves} moves: {times}{first}, then {then}{left}")
            .finds("swap", "in two moves: set the block over {first}, then put {then} in its place{left}; or {makeUp}")
            .finds("paper", "{makeUp}");

    static final Form<FeelerStack> FORM = left(
                    Form.<FeelerStack>of("leaf-stack"), "wanted less height; positive: short", FeelerStack::residualMm)
            .fact("wanted", Kind.MM, "gap", stack -> stack.wantedMm)
            .fact("leaves", Leaves.KIND, "as stamped, thinnest first", stack -> stack.named(stack.thicknessesMm))
            .fact(
                    "height",
                    Kind.ESTIMATE,
                    "of the stack, by the leaves' tolerances",
                    stack -> Estimate.of(stack.height(), stack.uncertainty()))
            .phrase("u", ", u {height:u}")
            .finds("close", FeelerStack::isClose, "{leaves}{left}{u}")
            .finds("not-close", "{leaves}{left}{u}")
            .factIfAny("remedy", Kind.answer(REMEDY), "the alternative", FeelerStack::farther)
            .note("remedy", "{remedy}");

    private final FeelerSet set;
    private final int most;
    private final double[] thicknessesMm;
    private final double wantedMm;
    private final double wantedUncertaintyMm;
    private final double uncertaintyMm;
    private final double ratio;
    private final boolean toward;

    /**
     * Finds the stack.
     *
     * @param set the leaves at hand
     * @param most the most leaves in a stack
     * @param wantedMm the gap in mm, 0 or more
     * @param wantedUncertaintyMm its standard uncertainty: a residual inside twice this is left alone
     * @param ratio how much the gap changes for a move of 1 at the cutter
     * @param toward whether the fence goes toward the cutter, which decides the order of a swap
     * @param style how lengths are printed
     */
    FeelerStack(
            FeelerSet set,
            int most,
            double wantedMm,
            double wantedUncertaintyMm,
            double ratio,
            boolean toward,
            LengthStyle style) {
        super(FORM, style);
        if (!(most >= 1 && most <= LeafSearch.MOST_LEAVES)) {
            throw Refusal.of("leaves in a stack", "range", "be 1 to " + LeafSearch.MOST_LEAVES, "were", most);
        }
        double[] all = set.thicknessesMm();
        this.set = set;
        this.most = most;
        this.thicknessesMm = pick(all, LeafSearch.nearest(all, wantedMm, most));
        this.wantedMm = wantedMm;
        this.wantedUncertaintyMm = wantedUncertaintyMm;
        this.uncertaintyMm = set.halfWidthMm() * Math.sqrt(thicknessesMm.length / 3.0);
        this.ratio = ratio;
        this.toward = toward;
    }

    /** What comes nearest a gap in mm: a stack, several of them one after the other, or a rule where it is too far for leaves. */
    static double nearestMm(FeelerSet set, double gapMm) {
        double[] all = set.thicknessesMm();
        double reach = Arrays.stream(thickest(all, USUAL_LEAVES)).sum();
        int full = fullMoves(gapMm, reach);
        if (full == MOST_MOVES) {
            return gapMm;
        }
        double rest = gapMm - full * reach;
        return full * reach
                + Arrays.stream(pick(all, LeafSearch.nearest(all, rest, USUAL_LEAVES)))
                        .sum();
    }

    private static double[] thickest(double[] all, int most) {
        double[] thick = all.clone();
        Arrays.sort(thick);
        return Arrays.copyOfRange(thick, Math.max(0, thick.length - most), thick.length);
    }

    /** Moves with the thickest stack before one that is left. */
    private static int fullMoves(double wanted, double reach) {
        return wanted > reach ? (int) Math.min(MOST_MOVES, Math.floor(wanted / reach)) : 0;
    }

    /** The move at the cutter that it makes, positive toward it. */
    double towardMm() {
        double move = heightMm() / ratio;
        return toward ? move : -move;
    }

    double uncertaintyAtCutterMm() {
        return uncertaintyMm / ratio;
    }

    /** Leaves by what is stamped on them. */
    private static final class Leaves {

        static final Kind<Leaves> KIND = Kind.own(
                Leaves::text,
                (leaves, style) -> leaves.data(),
                Map.of("type", "array", "items", Map.of("$ref", "#/$defs/quantity")));

        private final double[] mm;
        private final LengthStyle stamped;

        Leaves(double[] mm, LengthStyle stamped) {
            this.mm = mm;
            this.stamped = stamped;
        }

        /** Where the move is in another unit, their height in that one as well. */
        private String text(LengthStyle style) {
            if (mm.length == 0) {
                return "no leaf";
            }
            boolean alike = stamped.unit().symbol().equals(style.unit().symbol());
            String unit = alike ? "" : stamped.unit().symbol() + " ";
            return Arrays.stream(mm)
                            .mapToObj(leaf -> leafName(stamped.unit().fromLibrary(leaf), stamped))
                            .collect(Collectors.joining(" + "))
                    + " " + unit + (mm.length == 1 ? "leaf" : "leaves")
                    + (alike ? "" : " (" + style.text(Arrays.stream(mm).sum()) + ")");
        }

        private List<Map<String, Object>> data() {
            ShopUnit<Length> unit = stamped.inTables().unit();
            return Arrays.stream(mm)
                    .mapToObj(leaf -> {
                        Map<String, Object> data = new LinkedHashMap<>();
                        data.put("value", new Json.Figure(Numbers.plain(unit.fromLibrary(leaf))));
                        data.put("unit", unit.toString());
                        data.put("ucum", unit.ucum());
                        return data;
                    })
                    .toList();
        }
    }

    /** Moves that come nearer than one stack; without leaves where none do. */
    private record Remedy(
            int full, @Nullable Leaves first, @Nullable Leaves then, double leftMm, boolean isShort) {}

    private static <T> Form<T> left(Form<T> form, String meaning, Function<T, Double> mm) {
        return form.fact("residual", Kind.MM, meaning, mm)
                .phrase("left", one -> Math.abs(mm.apply(one)) < EXACT_MM, ", exact")
                .phrase("left", one -> mm.apply(one) > 0, ", {residual:size text} short")
                .phrase("left", ", {residual:size text} over");
    }

    private Optional<Remedy> farther() {
        if (isClose()) {
            return Optional.empty();
        }
        double[] all = set.thicknessesMm();
        double wanted = wantedMm;
        double residual = residualMm();
        double[] top = thickest(all, most);
        double reach = Arrays.stream(top).sum();
        int full = fullMoves(wanted, reach);
        if (full > 0) {
            if (full == MOST_MOVES) {
                return Optional.of(new Remedy(full, null, null, Double.NaN, true));
            }
            double[] rest = pick(all, LeafSearch.nearest(all, wanted - full * reach, most));
            double left = wanted - full * reach - Arrays.stream(rest).sum();
            return Optional.of(new Remedy(full, named(top), named(rest), left, true));
        }
        LeafSwap swap = LeafSwap.nearest(all, wanted);
        double[] taken = pick(all, swap.taken);
        double[] put = pick(all, swap.put);
        double left = wanted - Arrays.stream(taken).sum() + Arrays.stream(put).sum();
        boolean isNearer = Math.abs(left) < Math.abs(residual) - 1e-9;
        return Optional.of(
                isNearer
                        ? new Remedy(0, named(toward ? put : taken), named(toward ? taken : put), left, residual > 0)
                        : new Remedy(0, null, null, Double.NaN, residual > 0));
    }

    private Leaves named(double[] mm) {
        return new Leaves(mm, set.stampedIn());
    }

    private static double[] pick(double[] all, int[] places) {
        double[] picked = new double[places.length];
        for (int i = 0; i < places.length; i++) {
            picked[i] = all[places[i]];
        }
        Arrays.sort(picked);
        return picked;
    }

    /** {@return the leaves of the stack; thinnest first; empty when no leaf at all is nearest} */
    public List<Amount<Length>> leaves() {
        List<Amount<Length>> leaves = new ArrayList<>();
        for (double leaf : thicknessesMm) {
            leaves.add(set.stampedIn().amount(leaf));
        }
        return List.copyOf(leaves);
    }

    /** {@return what was wanted; 0 or more} */
    public Amount<Length> wanted() {
        return style().amount(wantedMm);
    }

    /** {@return the height of the stack; 0 or more} */
    public Amount<Length> height() {
        return style().amount(heightMm());
    }

    private double heightMm() {
        return Arrays.stream(thicknessesMm).sum();
    }

    /** {@return what the stack leaves undone; wanted less height: positive when the stack is short} */
    public Amount<Length> residual() {
        return style().amount(residualMm());
    }

    private double residualMm() {
        return wantedMm - heightMm();
    }

    /** {@return the standard uncertainty of the stack's height, from the leaves' tolerances; 0 or more} */
    public Amount<Length> uncertainty() {
        return style().amount(uncertaintyMm);
    }

    /**
     * {@return whether the stack comes close: its residual is no more than twice the standard uncertainty of the wanted
     * move and the stack together, or than 0.02 mm, finer than which no fence is set by hand (common practice); true
     * when nothing more needs doing}
     */
    public boolean isClose() {
        double u = StrictMath.hypot(wantedUncertaintyMm, uncertaintyMm);
        return Math.abs(residualMm()) <= Math.max(FINE_ENOUGH_MM, 2 * u) + 1e-9;
    }

    /** {@return what to do instead where the stack is not close: several moves, two stacks, paper; else empty} */
    public String remedy() {
        return farther().map(remedy -> REMEDY.text(remedy, style())).orElse("");
    }

    @Override
    protected Object[] parts() {
        return new Object[] {thicknessesMm, wantedMm, uncertaintyMm, ratio, toward};
    }

    /** As stamped on the leaf: 0.70 mm, 0.025 in, more places only where the leaf has them. */
    private static String leafName(double value, LengthStyle stamped) {
        int places = stamped == LengthStyle.MILLIMETRES ? 2 : 3;
        String exact = Numbers.trimmed(value, 5);
        String usual = Numbers.fixed(value, places);
        return exact.length() > usual.length() ? exact : usual;
    }
}
